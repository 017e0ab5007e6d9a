import type { Finding } from '../rules/finding.js';

/** What a row of DONOW may say to do: a closed list, the row of `correct row` by its number. */
export type Act =
  | 'switch off'
  | 'give air'
  | 'restore the temperature'
  | 'move out'
  | 'change water'
  | 'no copper'
  | 'call a vet'
  | 'test copper'
  | 'test copper again'
  | 'test ammonia'
  | 'test ammonia and oxygen'
  | 'test copper, ammonia and oxygen'
  | `correct row ${number}`
  | 'measure the water'
  | 'check the bottle'
  | 'check the card'
  | 'compare the kits'
  | 'write the strength on the card'
  | 'look at the fish'
  | 'go on with copper'
  | 'treat for something else'
  | 'lower copper, then wait'
  | 'raise slowly'
  | 'stop copper'
  | 'choose a pace'
  | 'dose'
  | 'thin the solution'
  | 'move fish'
  | 'take copper out'
  | 'give'
  | 'days left'
  | 'see QT.READY'
  | 'nothing now';

/** The order of a table of tasks: what kills, what cannot be trusted, the fish, copper, the next test, days and gates. */
export const urgencies = { kills: 1, untrusted: 2, fish: 3, copper: 4, test: 5, days: 6 } as const;

/** One thing to do. */
export interface Task {
  readonly act: Act;
  /** One of `urgencies`. */
  readonly urgency: number;
  /** What a hand can measure; null: nothing is measured. */
  readonly amount: number | null;
  readonly unit: '' | 'mL' | 'L' | 'days' | 'mg/mL';
  /** When it is due. [serial day] */
  readonly by: number;
  /** The number first, at most 120 characters; or what AUDIT says of a finding, and since when it is overdue. */
  readonly why: string | { readonly finding: Finding; readonly overdue: number | null };
}

/** So many letters has a reason at most. */
export const longestWhy = 120;

/** A reason from parts, the important first: the parts that no longer fit are left out. */
export function reason(...parts: readonly string[]): string {
  let text = '';
  for (const part of parts.filter((each) => each !== '')) {
    const longer = text === '' ? part : `${text}; ${part}`;
    if (longer.length <= longestWhy) text = longer;
    else if (text === '') text = `${part.slice(0, longestWhy - 1)}…`;
  }
  return text;
}

/** A task that measures nothing. */
export function plainTask(act: Act, urgency: number, by: number, why: Task['why']): Task {
  return { act, urgency, amount: null, unit: '', by, why };
}
