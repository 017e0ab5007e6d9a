import { deathRows, fishCount, type Treatment } from '../../engine/index.js';
import type { FishMark } from './plotParts.js';

/** Fish that came in, left and died, as the log's own columns say, in time order. */
export function fishMarks(treatment: Treatment): FishMark[] {
  const died = deathRows(treatment).map(({ when, row, count, exact, written }): FishMark => {
    return { when, row, kind: 'died', count: exact ? count : null, text: written };
  });
  const moved = [...moves(treatment, 'fish in'), ...moves(treatment, 'fish out')];
  return [...moved, ...died].sort((a, b) => a.when - b.when);
}

/** Deaths in the column of fish that leave are among the deaths. */
const dead = /\b(?:dead|died|dies|doa|lost)\b/i;

function moves({ log }: Treatment, column: 'fish in' | 'fish out'): FishMark[] {
  const texts = log.texts[column];
  const marks: FishMark[] = [];
  for (let entry = 0; entry < (texts === null ? 0 : log.count); entry++) {
    const text = texts?.[entry] ?? '';
    if (text === '' || (column === 'fish out' && dead.test(text))) continue;
    const { count, all, exact } = fishCount(text, column);
    if (count === 0 && !all) continue;
    marks.push({
      when: log.when[entry] ?? NaN,
      row: log.row[entry] ?? 0,
      kind: column === 'fish in' ? 'in' : 'out',
      count: exact && !all ? count : null,
      text,
    });
  }
  return marks;
}
