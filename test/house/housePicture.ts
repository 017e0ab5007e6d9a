import { floors } from './floors.js';

/** The house in words, top floor first, as DEVELOPERS.md shows it: what each floor holds and knows, and the layers of its rooms. */
export function housePicture(): string {
  const rows = [...floors]
    .reverse()
    .flatMap(({ folder, holds, knows, doors, layers }) => [
      `${folder}: ${holds}`,
      `    knows   ${knows.length === 0 ? 'nothing' : knows.join(', ')}${doors === undefined ? '' : `; door ${doors.join(', ')}`}`,
      ...(layers.length === 0 ? [] : [`    rooms   ${layers.map((layer) => layer.join(' ')).join(' → ')}`]),
      '',
    ]);
  return ['```text', ...rows.slice(0, -1), '```'].join('\n');
}
