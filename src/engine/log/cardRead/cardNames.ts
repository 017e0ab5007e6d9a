import type { DimensionName } from '../../dimensions/dimensions.js';
import { headingKey } from '../headings/columnKinds.js';

/** What a row of a card may set. */
export type CardName =
  | 'system'
  | 'volume'
  | 'band'
  | 'strength'
  | 'aim'
  | 'meter accuracy'
  | 'meter percent'
  | 'meter from'
  | 'reads'
  | 'days'
  | 'pace'
  | 'longest gap'
  | 'fish'
  | 'start'
  | 'arrived'
  | 'temperature'
  | 'salinity'
  | 'pH'
  | 'disease'
  | 'confirm'
  | 'newcomers'
  | 'gallon';

interface CardWords {
  readonly name: CardName;
  readonly words: RegExp;
  readonly dimension?: DimensionName;
}

/** The words for each name in the order in which they decide: the first that fits is what a row is read as. */
const cardWords: readonly CardWords[] = [
  { name: 'gallon', words: /\bgallons?\b/ },
  { name: 'meter percent', words: /\bmeter (?:percent|%)|\b(?:accuracy|meter) ?\(?%\)?/ },
  { name: 'meter from', words: /\bmeter from\b|\breads from\b|\bdetection\b|\bquantification\b/, dimension: 'level' },
  { name: 'meter accuracy', words: /\baccuracy\b|\bmeter\b/, dimension: 'level' },
  { name: 'longest gap', words: /\bgap\b/, dimension: 'hours' },
  { name: 'newcomers', words: /\bnewcomers?\b|\bnew fish\b/ },
  { name: 'confirm', words: /\bconfirm\w*/ },
  { name: 'reads', words: /\breads\b/ },
  { name: 'volume', words: /\bvol(?:ume)?\b/, dimension: 'litres' },
  { name: 'strength', words: /\bstrength\b|\bstock\b/, dimension: 'strength' },
  { name: 'band', words: /\bform\b|\bband\b|\bcopper\b/ },
  { name: 'aim', words: /\baim\b|\btarget\b/, dimension: 'level' },
  { name: 'pace', words: /\bpace\b/ },
  { name: 'arrived', words: /\barriv\w*/ },
  { name: 'start', words: /\bstart(?:ed)?\b|\bfirst dose\b/ },
  { name: 'days', words: /\bdays?\b/, dimension: 'days' },
  { name: 'fish', words: /\bfish\b/ },
  { name: 'temperature', words: /\btemp(?:erature)?\b/, dimension: 'celsius' },
  { name: 'salinity', words: /\bsalinity\b|\bs\.?g\.?\b/, dimension: 'salinity' },
  { name: 'pH', words: /\bph\b/, dimension: 'plain' },
  { name: 'disease', words: /\bdisease\b|\bcondition\b|\bdiagnosis\b/ },
  { name: 'system', words: /\bsystem\b|^(?:tank|rack)(?: name)?$/ },
];

export function cardWordsFor(text: string): CardWords | null {
  const key = headingKey(text);
  return cardWords.find(({ words }) => words.test(key)) ?? null;
}
