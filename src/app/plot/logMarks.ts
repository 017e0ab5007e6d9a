import {
  copperRise,
  deathRows,
  eventKinds,
  fishCount,
  holdRows,
  levelNumber,
  litres,
  millilitres,
  type Treatment,
} from '../../engine/index.js';
import type { FishMark, PlotChange, PlotData, PlotDose, PlotReading } from './plotParts.js';

/** The readings in time order, each with its place in the band and the kind of number it is. */
export function readingMarks({ readings, terms, card }: Treatment): PlotReading[] {
  return holdRows(readings, terms, card.band).map(({ when, level, status, row }, index) => {
    const odd = readings.odd.get(row);
    const low = readings.low[index] ?? NaN;
    const high = odd?.high ?? low;
    const bound = odd?.under !== undefined ? 'under' : high === Infinity ? 'over' : high > low ? 'range' : null;
    const approximate = odd?.approximate ?? false;
    const reading: Level = { low, high: high === Infinity ? null : high, level, bound, approximate };
    return { ...reading, when, row, status, text: written(reading) };
  });
}

type Level = Omit<PlotReading, 'when' | 'row' | 'status' | 'text'>;

function written({ low, high, level, bound, approximate }: Level): string {
  switch (bound) {
    case 'under':
      return `<${levelNumber(level)}`;
    case 'over':
      return `>${levelNumber(low)}`;
    case 'range':
      return `${levelNumber(low)}–${levelNumber(high ?? low)}`;
    case null:
      return `${approximate ? '~' : ''}${levelNumber(level)}`;
  }
}

/** Doses and water changes in time order, with what each does to the water of its time. */
export function waterMarks({ events, card }: Treatment): Pick<PlotData, 'doses' | 'changes'> {
  const doses: PlotDose[] = [];
  const changes: PlotChange[] = [];
  const { strength } = card;
  let volume = card.volume;
  for (let index = 0; index < events.count; index++) {
    const amount = events.amount[index] ?? NaN;
    const at = { when: events.when[index] ?? NaN, row: events.row[index] ?? 0 };
    const kind = events.kind[index];
    if (kind === eventKinds.volume) volume = litres(amount);
    if (kind === eventKinds.dose) {
      const added = millilitres(amount);
      doses.push({
        ...at,
        millilitres: amount,
        rise: strength === null ? null : copperRise({ volume, added, strength }),
      });
    }
    if (kind !== eventKinds.change) continue;
    const replacement = events.detail[index] ?? NaN;
    changes.push({
      ...at,
      litres: amount,
      percent: (100 * amount) / volume,
      replacement: Number.isNaN(replacement) ? null : replacement,
    });
  }
  return { doses, changes };
}

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
