import { auditFindings } from '../../../src/engine/audit/auditFindings.js';
import { findingText } from '../../../src/engine/text/findingText.js';
import { chelatedCard, raisedLog } from '../rules/raisedLog.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const days = (...lines: readonly string[]): string =>
  `${raisedLog}${lines.map((line) => `  2026-03-${line}\n`).join('')}`;
const then = ['09 08:00 | 2.25 |', '10 08:00 | 2.24 |'];

const sentences: readonly [string, string, RegExp][] = [
  [
    'unit-slip',
    days('08 08:00 | 22.5 |', ...then),
    /^22\.5 mg\/L is written where about 2\.2\d mg\/L is expected; with its decimal point moved back it is 2\.25 mg\/L: correct/,
  ],
  [
    'unit-slip',
    days('08 08:00 | 2250 | 1', ...then),
    /read as ug\/L it is 2\.25 mg\/L: copper was dosed on it, test before anything else\.$/,
  ],
  [
    'swapped-rows',
    raisedLog.replace('| 1.12 ', '| x ').replace('| 0.56 ', '| 1.12 ').replace('| x ', '| 0.56 '),
    /^1\.12 mg\/L here and 0\.56 mg\/L in row 4 each fit the other's place/,
  ],
  ['swapped-systems', days('08 08:00 | 0.5 |', ...then), /^0\.5 mg\/L fits amine copper and not this system/],
  [
    'double-dose',
    days('08 08:00 | 2.2 | 4', '08 09:30 | | 4', '09 08:00 | 2.59 |'),
    /^4 mL 1\.5 h after 4 mL in row 9 with no test between: the next reading, 2\.59 mg\/L in row 11, fits both doses given/,
  ],
  [
    'double-dose',
    days('08 08:00 | 2.2 | 4', '08 08:00 | | 4', '09 08:00 | 2.4 |'),
    /at the time of 4 mL in row 9 .* likely written twice; strike one out\.$/,
  ],
  [
    'wrong-form',
    days('08 08:00 | 0.5 |', '09 08:00 | 0.5 |', '10 08:00 | 0.5 |', '11 08:00 | 2.25 |'),
    /^0\.5, 0\.5, 0\.5 mg\/L in a row are under a third of the low \(0\.65 mg\/L\): they fit amine copper/,
  ],
  [
    'unmatched-change',
    days('08 09:00 | 2.25 | | 80 |', '09 08:00 | 1.35 |'),
    /^80 L changed takes the level from 2\.25 mg\/L to 1\.35 mg\/L, below 1\.95 mg\/L: bring new water/,
  ],
  [
    'unmatched-change',
    days('08 09:00 | 2.25 | | 80 | | matched', '09 08:00 | 1.35 |'),
    /the row says matched, and the next reading does not agree\.$/,
  ],
  [
    'unmatched-change',
    days('08 09:00 | 2.25 | | 80 |', '09 08:00 | 2.25 |'),
    /in row 10, fits matched water, so write "matched" if it was\.$/,
  ],
  [
    'unexplained-reading',
    days('08 08:00 | 3.1 |', ...then),
    /^3\.1 mg\/L where doses, changes and loss lead to 2\.2\d mg\/L .* look for a bad test\.$/,
  ],
  [
    'absorber',
    `${days('08 08:00 | 2.25 | | | | live rock')}${[2.1, 1.97, 1.85, 1.74].map((level, day) => ` 2026-03-0${day + 9}`.replace('010', '10').replace('011', '11').replace('012', '12') + ` 08:00 | ${level} |\n`).join('')}`,
    /^"live rock" is noted and the level falls by \d+(\.\d)? % a day from here, against up to 0\.5 % usual/,
  ],
  [
    'dose-untested',
    days('08 08:00 | 2.2 | 1', '09 07:00 | | 1'),
    /^1 mL dosed with no test since the dose of row 9, 23 h before: test first, then dose\.$/,
  ],
  [
    'copper-in-top-off',
    days('08 08:00 | 2.25 | | | 4 | dosed the ATO'),
    /^"dosed the ATO" is noted: top off with water without copper/,
  ],
];

describe('findingText of slips', () => {
  it.each(sentences)('puts %s into words', (code, log, words) => {
    const finding = auditFindings(treatmentFrom(log, chelatedCard)).find((each) => each.code === code);
    if (finding === undefined) throw new Error(`${code} was not found`);
    const { finding: said, why } = findingText(finding);
    expect(said).toMatch(words);
    expect(said.length).toBeLessThan(240);
    expect(why).toMatch(/\.$/);
    expect(`${said} ${why}`).not.toMatch(/NaN|undefined|null|Infinity/);
  });
});
