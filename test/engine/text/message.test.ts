import { references } from '../../../src/engine/references/references.js';
import { isNotYet } from '../../../src/engine/result/isNotYet.js';
import type { Problem } from '../../../src/engine/result/problem.js';
import { message } from '../../../src/engine/text/message.js';

type Samples = { readonly [C in Problem['code']]: readonly Extract<Problem, { readonly code: C }>[] };

// As long as `shown` leaves it, in letters that count double.
const long = `"${'𝄞'.repeat(39)}…"`;
const longNumber = `"${'9'.repeat(39)}…"`;
const row = { row: 1048576 };
const field = { field: 'replacement level' };
const x = -1.234567890123e-200;

/** Every code, with the longest data it can carry and in each of its shapes. */
const samples: Samples = {
  'missing-heading': [{ code: 'missing-heading', kind: 'temperature' }],
  'two-headings': [{ code: 'two-headings', kind: 'replacement', first: long, second: long }],
  'heading-unit': [
    {
      code: 'heading-unit',
      heading: long,
      kind: 'change',
      unit: 'mg/l',
      known: 'L mL gal, imp gal, cc tsp tbsp fl oz',
    },
  ],
  'row-without-time': [{ code: 'row-without-time', row: 1048576 }],
  'several-systems': [{ code: 'several-systems', systems: [long, long, long, long] }],
  'card-shape': [{ code: 'card-shape', rows: 1048576, columns: 16384 }],
  'card-twice': [{ code: 'card-twice', name: 'meter accuracy', first: long, second: long }],
  'card-without': [{ code: 'card-without', card: `card of ${long}`, name: 'form or band' }],
  'log-without-rows': [{ code: 'log-without-rows' }],
  blank: [
    { code: 'blank', at: row, kind: 'band' },
    { code: 'blank', at: field, kind: 'strength' },
  ],
  'zero-level': [{ code: 'zero-level', field: 'level' }],
  'blank-level': [{ code: 'blank-level', field: 'level' }],
  'error-cell': [{ code: 'error-cell', at: row, given: long }],
  'many-cells': [{ code: 'many-cells', field: 'smallest mL', cells: 1048576 }],
  'not-a-value': (
    [
      'litres',
      'millilitres',
      'centimetres',
      'level',
      'strength',
      'salinity',
      'hours',
      'days',
      'grams',
      'celsius',
      'plain',
      'percent',
      'change',
      'choice',
      'text',
      'time',
      'band',
      'reading',
      'fish',
      'condition',
    ] as const
  ).flatMap((kind) => [
    { code: 'not-a-value' as const, at: row, given: long, kind },
    { code: 'not-a-value' as const, at: field, given: long, kind },
  ]),
  'unknown-unit': [{ code: 'unknown-unit', at: field, given: long, known: 'L mL gal, imp gal, cc tsp tbsp fl oz' }],
  'three-digits-after-comma': [{ code: 'three-digits-after-comma', at: row, given: long }],
  'out-of-limits': [
    { code: 'out-of-limits', at: field, given: long, limits: { above: 0 }, unit: 'mg/mL' },
    { code: 'out-of-limits', at: field, given: long, limits: { min: x, max: x }, unit: 'mg/L' },
    { code: 'out-of-limits', at: field, given: long, limits: { above: x, below: x }, unit: '' },
    { code: 'out-of-limits', at: row, given: long, limits: { below: 14 }, unit: '' },
  ],
  'not-whole': [{ code: 'not-whole', field: 'doses a day', given: long }],
  'not-a-choice': [
    { code: 'not-a-choice', field: 'pace', given: long, choices: ['gradual', 'sensitive', 'urgent'] },
    { code: 'not-a-choice', field: 'pace', given: long, choices: Array.from({ length: 90 }, (_, i) => `choice ${i}`) },
  ],
  'share-of-volume': [{ code: 'share-of-volume', field: 'change', given: '0.3333333333' }],
  'share-without-volume': [{ code: 'share-without-volume', field: 'change', given: long }],
  'not-a-reading': [
    { code: 'not-a-reading', at: row, given: long },
    { code: 'not-a-reading', at: field, given: long },
  ],
  'reading-too-high': [
    { code: 'reading-too-high', at: row, given: long, bare: true },
    { code: 'reading-too-high', at: row, given: long, bare: false },
  ],
  'reading-negative': [{ code: 'reading-negative', at: row, given: long }],
  'bound-not-a-level': [{ code: 'bound-not-a-level', field: 'reading', given: long }],
  'not-a-time': [{ code: 'not-a-time', at: row, given: long }],
  'time-with-zone': [{ code: 'time-with-zone', at: row, given: long }],
  'time-without-date': [{ code: 'time-without-date', at: row, given: long }],
  'not-a-time-of-day': [{ code: 'not-a-time-of-day', at: row, given: long }],
  'two-times-of-day': [{ code: 'two-times-of-day', row: 1048576, given: long }],
  'reading-without-time': [{ code: 'reading-without-time', row: 1048576, given: long }],
  'text-without-time': [{ code: 'text-without-time', row: 1048576, given: long }],
  'zero-or-untested': [{ code: 'zero-or-untested', row: 1048576 }],
  'not-a-line': [
    { code: 'not-a-line', field: 'when', rows: 1048576, columns: 16384 },
    { code: 'not-a-line', field: 'copper', rows: 3, columns: 4 },
  ],
  'unequal-ranges': [
    { code: 'unequal-ranges', first: 'when', firstCells: 1048576, second: 'copper', secondCells: 1048575 },
  ],
  'not-a-form': [
    { code: 'not-a-form', field: 'band', given: long },
    { code: 'not-a-form', field: 'form', given: long },
  ],
  'form-unclear': [{ code: 'form-unclear', field: 'form', given: long }],
  'band-upside-down': [{ code: 'band-upside-down', low: longNumber, high: longNumber }],
  'band-cells': [{ code: 'band-cells', rows: 1048576, columns: 16384 }],
  'no-water-left': [{ code: 'no-water-left', litres: x }],
  'more-than': [
    {
      code: 'more-than',
      field: 'wanted strength',
      given: long,
      limitField: 'full volume',
      limit: longNumber,
      unit: 'mg/mL',
    },
  ],
  'not-below': [
    { code: 'not-below', field: 'lost', given: long, limitField: 'full volume', limit: longNumber, unit: 'L' },
  ],
  'rise-too-small': [{ code: 'rise-too-small', rise: x, needed: x }],
  'strength-unlikely': [{ code: 'strength-unlikely', strength: x }],
  'lowering-by-dose': [{ code: 'lowering-by-dose', wanted: x, level: x }],
  'above-band': [{ code: 'above-band', wanted: x, band: 'chelated', low: x, high: x }],
  'raising-by-change': [{ code: 'raising-by-change', wanted: x, level: x }],
  'not-above-replacement': [{ code: 'not-above-replacement', wanted: x, replacement: x }],
  'dose-step-zero': [{ code: 'dose-step-zero', total: x, doses: 35040, smallest: x }],
  'doses-past-a-day': [{ code: 'doses-past-a-day', doses: 96, hoursBetween: x }],
  'not-one-level': [{ code: 'not-one-level', row: 1048576, given: long }],
  'rise-not-below-reading': [{ code: 'rise-not-below-reading', row: 1048576, rise: x, level: x }],
  'rise-without-time': [{ code: 'rise-without-time', row: 1048576, given: long }],
  'readings-too-close': [{ code: 'readings-too-close', hours: x }],
  'no-reading': [{ code: 'no-reading' }],
  'no-hold': [
    { code: 'no-hold', level: longNumber, when: '2026-03-04 08:00', row: 1048576, low: 1.95, confirming: false },
    { code: 'no-hold', level: longNumber, when: '2026-03-04 08:00', row: 1048576, low: 1.95, confirming: true },
  ],
  'meter-without-error': [{ code: 'meter-without-error' }],
  'meter-too-coarse': [
    { code: 'meter-too-coarse', low: x, high: x, needed: x },
    { code: 'meter-too-coarse', low: x, high: x, needed: null },
  ],
  'outside-validity': (Object.keys(references) as (keyof typeof references)[]).map((source) => ({
    code: 'outside-validity' as const,
    field: 'specific gravity',
    given: x,
    min: -5,
    max: 35.25,
    unit: 'g/kg',
    source,
  })),
  'answer-too-large': [{ code: 'answer-too-large' }],
  'table-too-large': [{ code: 'table-too-large', rows: 1048576 }],
};

const every: readonly Problem[] = Object.values(samples).flat();
const each = every.map((problem) => [`${problem.code}: ${JSON.stringify(problem)}`, problem] as const);

describe('message', () => {
  it.each(each)('is one sentence of at most 200 characters: %s', (_, problem) => {
    const sentence = message(problem);
    expect(sentence.length).toBeLessThanOrEqual(200);
    expect(sentence).not.toMatch(/\. [A-Z]|[.;:,]$|\n|undefined|NaN|\[object/);
    expect(sentence).toMatch(/\p{L}{3}/u);
    expect(Number.isNaN(Number(sentence))).toBe(true);
  });

  it.each(each)('says where: %s', (_, problem) => {
    const sentence = message(problem);
    const at = 'at' in problem ? problem.at : problem;
    if ('row' in at) expect(sentence).toContain(`row ${at.row}`);
    if ('field' in at) expect(sentence).toContain(at.field);
  });

  it.each(each)('says what to do: %s', (_, problem) => {
    if (isNotYet(problem)) expect(message(problem)).toMatch(/reading|test|write/);
    else expect(message(problem)).toMatch(/; (.*\b)?(write|give|fix|check|use|see|fill|lowering|raising)\b/);
  });

  it('has no sentence that is cut short before it says what to write', () => {
    for (const problem of every) expect(message(problem)).not.toMatch(/…$/);
  });

  it.each<[string, Problem]>([
    [
      'row 12: "purple" is not a reading; write 2.05, "2.05 ppm" or "<0.05", or leave it empty',
      { code: 'not-a-reading', at: { row: 12 }, given: '"purple"' },
    ],
    [
      'row 12: 2250 is more than 20 mg/L; if it is ug/L write "2250 ug/L"',
      { code: 'reading-too-high', at: { row: 12 }, given: '2250', bare: true },
    ],
    [
      'row 12: "2250" is more than 20 mg/L; if it is ug/L write "2250 ug/L"',
      { code: 'reading-too-high', at: { row: 12 }, given: '"2250"', bare: true },
    ],
    [
      'when has 60 cells, copper 59; give ranges of the same rows',
      { code: 'unequal-ranges', first: 'when', firstCells: 60, second: 'copper', secondCells: 59 },
    ],
    [
      'wanted 2 is below the level 2.5; lowering takes a water change, see QT.CHANGETOLOWER',
      { code: 'lowering-by-dose', wanted: 2, level: 2.5 },
    ],
    [
      'no hold is running: the last reading, 1.8 on 2026-03-04 08:00 (row 31), is below 1.95',
      { code: 'no-hold', level: '1.8', when: '2026-03-04 08:00', row: 31, low: 1.95, confirming: false },
    ],
    [
      'row 7 reads 0; if that is real write "0 mg/L", if it is an untested day write "none"',
      { code: 'zero-or-untested', row: 7 },
    ],
    [
      'form "ionic" is unclear; write "sulfate" (free copper, 0.18–0.21) or "amine" (complexed, 0.45–0.55)',
      { code: 'form-unclear', field: 'form', given: '"ionic"' },
    ],
    [
      'change 0.3 may be litres or a share; write "0.3 L" or "30%"',
      { code: 'share-of-volume', field: 'change', given: '0.3' },
    ],
    [
      'wanted 3 is above the chelated band, 1.95–2.55; write at most 2.55',
      { code: 'above-band', wanted: 3, band: 'chelated', low: 1.95, high: 2.55 },
    ],
    [
      'volume "abc" is not a volume; write litres, like 200, "200 L" or "50 gal"',
      { code: 'not-a-value', at: { field: 'volume' }, given: '"abc"', kind: 'litres' },
    ],
    [
      'level 25 is outside its limits; write a value from 0 to 20 mg/L',
      { code: 'out-of-limits', at: { field: 'level' }, given: '25', limits: { min: 0, max: 20 }, unit: 'mg/L' },
    ],
    [
      'volume -3 is outside its limits; write a value above 0 L',
      { code: 'out-of-limits', at: { field: 'volume' }, given: '-3', limits: { above: 0 }, unit: 'L' },
    ],
  ])('writes %s', (sentence, problem) => {
    expect(message(problem)).toBe(sentence);
  });
});
