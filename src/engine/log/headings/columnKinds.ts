import type { DimensionName } from '../../dimensions/dimensions.js';

/** What a column of a log may be. */
export type ColumnKind =
  | 'replacement'
  | 'top-off'
  | 'change'
  | 'dose'
  | 'fish in'
  | 'fish out'
  | 'dead'
  | 'signs'
  | 'note'
  | 'flukes'
  | 'system'
  | 'lot'
  | 'who'
  | 'salinity'
  | 'temperature'
  | 'pH'
  | 'ammonia'
  | 'oxygen'
  | 'nitrite'
  | 'volume'
  | 'hold day'
  | 'time'
  | 'copper';

export interface ColumnWords {
  readonly kind: ColumnKind;
  readonly words: RegExp;
  /** The dimension of its numbers, where it has any. */
  readonly dimension?: DimensionName;
  /** Several such columns make one text, a row's cells joined. */
  readonly joins?: true;
}

/** The words for each column in the order in which they decide: the first that fits a heading is what it is read as. */
export const columnKinds: readonly ColumnWords[] = [
  { kind: 'replacement', words: /\brepl(?:acement|\.)?\b|\bnew water\b/, dimension: 'level' },
  { kind: 'top-off', words: /\btop(?:ped)?[- ]?(?:off|up)\b|\bato\b|\bevap\w*/, dimension: 'litres' },
  { kind: 'change', words: /\bchanged?s?\b|\bchg\b|\bp?wc\b/, dimension: 'litres' },
  {
    kind: 'dose',
    words:
      /\bdos(?:e|es|ed|ing|age)\b|\bmed(?:s|ication|icine)?\b|\bstock\b|\bsolution\b|\b(?:ml|copper|cu) added\b|\badded ml\b|^ml$/,
    dimension: 'millilitres',
  },
  { kind: 'fish in', words: /\b(?:fish|new) in\b|\bnew fish\b|\bfish added\b|\barriv\w*|^in$|^added$/ },
  { kind: 'fish out', words: /\bfish (?:out|removed)\b|\bremoved\b|\bmoved\b|\bsold\b|\btransferr?e?d?\b|^out$/ },
  { kind: 'dead', words: /\bdead\b|\bdeaths?\b|\bdied\b|\bdoa\b|\bmort(?:s|ality|alities)?\b/ },
  {
    kind: 'signs',
    words:
      /\bsigns?\b|\bsymptoms?\b|\beating\b|\bfeed(?:ing)?\b|\bbehaviou?r\b|\bobs(?:ervations?)?\b|\bhealth\b|\bsx\b/,
    joins: true,
  },
  { kind: 'note', words: /\bnotes?\b|\bcomments?\b|\bremarks?\b|\bmemos?\b/, joins: true },
  { kind: 'flukes', words: /\bflukes?\b/ },
  { kind: 'system', words: /\bsystems?\b|\btank\b|\brack\b/ },
  { kind: 'lot', words: /\blot\b|\bbatch\b/ },
  { kind: 'who', words: /\bwho\b|\bby\b|\binitials?\b/ },
  { kind: 'salinity', words: /\bsalinity\b|\bs\.?g\.?\b|\bsal\b|\bspecific gravity\b/, dimension: 'salinity' },
  { kind: 'temperature', words: /\btemp(?:erature)?\b/, dimension: 'celsius' },
  { kind: 'pH', words: /\bph\b/, dimension: 'plain' },
  { kind: 'ammonia', words: /\bammonia\b|\bnh[34]\b|\btan\b/, dimension: 'level' },
  { kind: 'oxygen', words: /\boxygen\b|\bo2\b|^do$|\bdissolved o\w*/, dimension: 'level' },
  { kind: 'nitrite', words: /\bnitrites?\b|\bno2\b/, dimension: 'level' },
  { kind: 'volume', words: /\bvol(?:ume)?\b/, dimension: 'litres' },
  { kind: 'hold day', words: /\bhold days?\b|\bday (?:no|number|count)\b|\bday ?#|^days?$/, dimension: 'plain' },
  { kind: 'time', words: /\bdates?\b|\bwhen\b|\btimes?\b|\btimestamps?\b/ },
  {
    kind: 'copper',
    words: /\bcopper\b|\bcu\b|\blevel\b|\blvl\b|\breadings?\b|\btest(?:s|ed)?\b|\bppm\b/,
    dimension: 'level',
  },
];

/** The heading as the words are looked for in it: small letters, no underscores, one space at a time. */
export function headingKey(text: string): string {
  return text
    .toLowerCase()
    .replace(/[_\s]+/g, ' ')
    .replace(/[µμ]/g, 'u')
    .trim();
}
