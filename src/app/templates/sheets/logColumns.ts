import type { Rule, TableColumn } from '../plan/index.js';

type LogColumn = Omit<TableColumn, 'heading' | 'key'> & Required<Pick<TableColumn, 'takes' | 'width'>>;

/** 2000-01-01 and 2100-01-01. */
const dates = { kind: 'date', from: 36_526, to: 73_051 } as const;

/** Text, or a number that passes the test; `{it}` is the first cell of the column. */
function textOr(test: string): Rule['allows'] {
  return { kind: 'formula', formula: `OR(ISTEXT({it}),AND(ISNUMBER({it}),${test}))` };
}

function text(width: number, prompt: string, refusal = ''): LogColumn {
  return { width, kind: 'text', takes: { allows: { kind: 'anything' }, prompt, refusal } };
}

function number(format: string, width: number, from: number, to: number, prompt: string): LogColumn {
  const refusal = `Write a number from ${from} to ${to}, or leave the cell empty.`;
  return { width, format, kind: 'number', takes: { allows: { kind: 'decimal', from, to }, prompt, refusal } };
}

/** The columns of the logs by heading. `QT.HEADINGS` reads every heading, and its unit. */
export const logColumns = {
  System: text(
    9,
    'The name of the system, as on the sheet Systems.',
    'Choose a system from the sheet Systems; add a row there for a new one.',
  ),
  'Date and time': {
    width: 17,
    kind: 'time',
    takes: {
      allows: dates,
      prompt: 'Date and time of day, such as 2026-03-01 08:00. A row without a time is not read.',
      refusal: 'Write a date with the time of day, such as 2026-03-01 08:00.',
    },
  },
  'Copper mg/L': {
    width: 10,
    kind: 'number',
    format: '0.00',
    takes: {
      allows: textOr('{it}>=0,{it}<=20'),
      prompt: 'The reading, as mg/L copper: 2.05, or <0.05, ~2.1, 2.0-2.2, void 1.62. Not tested: leave it empty.',
      refusal: 'A level is from 0 to 20 mg/L. If the meter shows ug/L, write the unit: 2250 ug/L.',
    },
  },
  'Water change L': {
    width: 12,
    kind: 'number',
    format: '0.0',
    takes: {
      allows: textOr('{it}>1,{it}<=20000'),
      prompt: 'Litres of water changed. The reading of this row comes before the change.',
      refusal: 'Write litres, more than 1. For a quarter of the tank write its litres.',
    },
  },
  'New water mg/L': number(
    '0.00',
    10,
    0,
    20,
    'Copper in the new water of the change. Empty: none, unless the note says matched.',
  ),
  'Dose mL': number('0.0', 7, 0, 5000, 'mL of copper solution added to the tank. Test before the next dose.'),
  'Top-off L': number('0.0', 8, 0, 2000, 'Litres of fresh water to replace what evaporated. It adds no copper.'),
  'Temperature °C': number('0.0', 12, 0, 40, 'Degrees Celsius.'),
  'Salinity g/kg': number('0.0', 9, 0, 45, 'g/kg. For a hydrometer see QT.SALINITY.'),
  pH: number('0.0', 6, 5, 10, 'pH, for the share of ammonia that is poisonous.'),
  'Ammonia mg/L': number(
    '0.00',
    10,
    0,
    50,
    'Total ammonia. Liquid tests read falsely in copper-treated water; use an indicator in the tank.',
  ),
  Lot: text(8, 'The delivery or batch of the fish; deaths are counted by lot.'),
  'Fish in': text(24, 'How many of which fish came in: 2 clownfish, 1 royal gramma.'),
  'Fish out': text(17, 'How many of which fish left, and where to: 2 clownfish to display.'),
  Dead: {
    width: 14,
    kind: 'text',
    format: '0',
    takes: {
      allows: textOr('{it}>=0,{it}=INT({it})'),
      prompt: 'How many died, best with the name: 1 blue chromis.',
      refusal: 'Write a whole number, or the fish: 1 blue chromis.',
    },
  },
  Signs: text(15, 'What the fish show: all eating; not eating; breathing fast; flashing.'),
  Notes: text(44, 'Anything else, such as matched, carbon in the filter, new reagent bottle.'),
  By: text(12, 'Initials. A row where this begins with example is invented: delete it.'),
} as const satisfies Readonly<Record<string, LogColumn>>;

export type LogHeading = keyof typeof logColumns;
