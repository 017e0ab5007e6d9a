import { mkdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileAt } from './files/fileAt.js';
import { FileProblem } from '../../sheet/index.js';
import type { AuditedFile } from './auditedFile.js';

/** Not in a file's name on one system or another. */
// eslint-disable-next-line no-control-regex -- these too
const notInNames = /[\u0000-\u001f<>:"/\\|?*]+/g;

/**
 * Where each report goes: one to the file named; several, or one where a folder is named, each to a file of its own in the
 * folder, named after workbook, sheet and system.
 */
export function reportTargets(audits: readonly AuditedFile[], out: string): string[] {
  const isFolder = fileAt(out)?.isDirectory() === true || /[/\\]$/.test(out);
  if (audits.length === 1 && !isFolder) return [out];
  if (!isFolder && /\.html?$/i.test(out)) {
    throw new FileProblem(
      `${audits.length} treatments were audited; for their reports give a folder, or one --system or --sheet`,
    );
  }
  mkdirSync(out, { recursive: true });
  const taken = new Set<string>();
  return audits.map((each) => {
    const name = nameOf(each);
    let free = name;
    for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${name} ${n}`;
    taken.add(free.toLowerCase());
    return join(out, `${free}.html`);
  });
}

function nameOf({ file, audited: { log, system } }: AuditedFile): string {
  const workbook = basename(file).replace(/\.[^.]+$/, '');
  return [workbook, log.sheet, system ?? '']
    .map((part) => part.replace(notInNames, '-').trim())
    .filter((part, i, parts) => part !== '' && parts.indexOf(part) === i)
    .join(' ')
    .slice(0, 150);
}
