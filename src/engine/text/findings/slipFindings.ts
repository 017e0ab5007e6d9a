import { copperForms } from '../../dose/forms.js';
import type { SlipCause, TwiceVerdict } from '../../rules/slipFinding.js';
import type { ByFindingCode, FindingSentences } from './findingWords.js';

/** Slips of the pen, doses on untested or doubled, and water that does not behave. */
export const slipFindings = {
  'unit-slip': ({ cause, written, meant, expected, dosed }) => ({
    finding:
      `${level(written)} is written where about ${level(expected)} is expected; ${slipped[cause]} it is ${level(meant)}: ` +
      `${dosed ? 'copper was dosed on it, test before anything else' : 'correct the cell, or set it aside as "void"'}.`,
    why: 'One reading far off between readings that agree is more often a slip of the pen than a change in the water.',
  }),
  'swapped-rows': ({ written, expected, other, dosed }) => ({
    finding:
      `${level(written)} here and ${level(other.level)} in row ${other.row} each fit the other's place ` +
      `(${level(expected)} is expected here): ${dosed ? 'copper was dosed on it, test now' : 'change them over if so'}.`,
    why: "Two readings far off that agree once they are changed over were entered in each other's row.",
  }),
  'swapped-systems': ({ written, expected, fits, dosed }) => ({
    finding:
      `${level(written)} fits ${fits} copper and not this system, where about ${level(expected)} is expected: look for ` +
      `the entry in another system's log${dosed ? '; copper was dosed on it, test now' : ''}.`,
    why: 'A reading that fits another band and not its neighbours was likely taken from another tank.',
  }),
  'double-dose': ({ first, dose, hours, verdict, next }) => ({
    finding:
      `${millilitres(dose)} ${hours < 1 / 30 ? 'at the time of' : `${decimals(hours, 1)} h after`} ` +
      `${millilitres(first.dose)} in row ${first.row} with no test between: ${twice(verdict, next)}.`,
    why: 'Two doses within 3 hours and no test between are one dose given twice or one entry written twice.',
  }),
  'wrong-form': ({ side, levels, limit, fits }) => ({
    finding:
      `${levels.map((each) => decimals(each, 3)).join(', ')} mg/L in a row are ` +
      `${side === 'above' ? 'over three times the top' : 'under a third of the low'} (${level(limit)}): ` +
      `${fits === null ? 'the form, the band or the unit is not the one on the card' : formWords(fits)}.`,
    why: 'Bands belong to a chemical form; a test for free copper reads complexed copper low.',
  }),
  'unmatched-change': ({ litres, before, after, low, saysMatched, shownMatched }) => ({
    finding:
      `${decimals(litres, 1)} L changed takes the level from ${level(before)} to ${level(after)}` +
      `${after < low ? `, below ${level(low)}` : ''}: ${changeWords(saysMatched, shownMatched)}.`,
    why: "Replacement water is brought to the tank's level first; without a word a change brought no copper.",
  }),
  'unexplained-reading': ({ written, expected, low, high, then, further }) => ({
    finding:
      `${level(written)} where doses, changes and loss lead to ${level(expected)} (${decimals(low, 3)} to ` +
      `${decimals(high, 3)}); ${afterwards[then]}${furtherRows(further)}.`,
    why: 'A reading far outside what the log explains means a wrong test, or something that was not written down.',
  }),
  absorber: ({ word, lossPerDay, usual }) => ({
    finding:
      `"${word}" is noted and the level falls by ${percent(lossPerDay)} a day from here, against up to ${percent(usual)} ` +
      `usual: take it out, and test before each dose.`,
    why: 'Rock, coral sand, calcareous media, carbon and resin take up copper, and give some of it back later.',
  }),
  'dose-untested': ({ dose, hours, after, further }) => ({
    finding: `${millilitres(dose)} dosed ${untested(hours, after)}${furtherRows(further)}: test first, then dose.`,
    why: "Never dose on an untested level; a plan tests before each day's first dose.",
  }),
  'copper-in-top-off': ({ words, level: copper }) => ({
    finding:
      words === null
        ? `The level rises as water is topped off, as if that held about ${level(copper ?? 0)}: top off with water without copper.`
        : `"${words}" is noted: top off with water without copper, mix half an hour, then test.`,
    why: 'Copper does not evaporate: copper in the top-off raises the level day by day.',
  }),
} satisfies Partial<FindingSentences>;

const slipped: Readonly<Record<SlipCause, string>> = {
  micrograms: 'read as ug/L',
  milligrams: 'read as mg/L',
  'point lost': 'with its decimal point back',
  'point moved': 'with its decimal point moved back',
  'digits swapped': 'with two digits changed over',
};

const afterwards: Readonly<Record<ByFindingCode['unexplained-reading']['then'], string>> = {
  stays: 'the next reading agrees with it, so look for a dose, a change or a volume that is not in the log',
  'goes back': 'the next readings agree with the ones before it, so look for a bad test',
  last: 'test again before anything is dosed',
};

function twice(verdict: TwiceVerdict, next: ByFindingCode['double-dose']['next']): string {
  const seen = next === null ? '' : `${level(next.level)} in row ${next.row}`;
  const both = next === null ? '' : decimals(next.withBoth, 2);
  const one = next === null ? '' : decimals(next.withOne, 2);
  switch (verdict) {
    case 'dosed twice':
      return `${seen} fits both doses given (${both}) and not one (${one})`;
    case 'written twice':
      return `${seen} fits one dose (${one}) and not both (${both}), so it is likely written twice; strike one out`;
    case 'cannot tell':
      return `${seen} cannot tell both (${both}) from one (${one})`;
    case 'no reading':
      return 'test now, and dose nothing before';
  }
}

function formWords(fits: keyof typeof copperForms): string {
  const { low, high } = copperForms[fits].band;
  return `they fit ${fits} copper (${decimals(low, 2)} to ${decimals(high, 2)}); check the product, the card and what the test reads`;
}

function changeWords(saysMatched: boolean, shown: ByFindingCode['unmatched-change']['shownMatched']): string {
  if (saysMatched) return 'the row says matched, and the next reading does not agree';
  if (shown !== null) {
    return `the next reading, ${level(shown.level)} in row ${shown.row}, fits matched water, so write "matched" if it was`;
  }
  return `bring new water to the tank's level first, or write "matched" where it was`;
}

function untested(hours: number | null, after: ByFindingCode['dose-untested']['after']): string {
  if (after !== null) return `with no test since the dose of row ${after.row}, ${decimals(after.hours, 0)} h before`;
  return `with no test ${hours === null ? 'before it' : `for ${decimals(hours, 0)} h`}`;
}

function furtherRows(rows: readonly number[]): string {
  if (rows.length === 0) return '';
  const shown = rows.slice(0, 4).join(', ');
  return ` (so too row${rows.length === 1 ? '' : 's'} ${shown}${rows.length > 4 ? ` and ${rows.length - 4} more` : ''})`;
}

function level(x: number): string {
  return `${decimals(x, x < 0.01 ? 5 : x < 1 ? 3 : 2)} mg/L`;
}

function millilitres(x: number): string {
  return `${decimals(x, 2)} mL`;
}

function percent(share: number): string {
  return `${decimals(100 * share, 1)} %`;
}

/** No trailing zeros. */
function decimals(x: number, places: number): string {
  return String(Number(x.toFixed(places)));
}
