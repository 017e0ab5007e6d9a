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
  | 'gallon'
  | 'meter to'
  | 'smallest'
  | 'doses a day'
  | 'moved in'
  | 'accept copper for'
  | 'shares water with'
  | 'bottle mL'
  | 'bottle price'
  | 'tests left'
  | 'test price';

interface CardWords {
  readonly name: CardName;
  readonly words: RegExp;
  readonly dimension?: DimensionName;
}

/** The words for each name in the order in which they decide: the first that fits is what a row is read as. */
const cardWords: readonly CardWords[] = [
  { name: 'gallon', words: /\bgallons?\b/ },
  {
    name: 'bottle price',
    words: /\bbottle (?:price|cost)\b|\b(?:price|cost) (?:of|per|a) bottle\b/,
    dimension: 'plain',
  },
  { name: 'test price', words: /\btests? (?:price|cost)\b|\b(?:price|cost) (?:of|per|a) test\b/, dimension: 'plain' },
  { name: 'tests left', words: /\btests? left\b/, dimension: 'plain' },
  { name: 'bottle mL', words: /\bbottle (?:size|volume|holds)\b|\bbottle \(?ml\)?|^bottle$/, dimension: 'millilitres' },
  { name: 'smallest', words: /\bsmallest\b/, dimension: 'millilitres' },
  {
    name: 'doses a day',
    words: /\bdoses? (?:a|per|each|every) day\b|\bdoses? ?\/ ?day\b|\bdaily doses\b/,
    dimension: 'plain',
  },
  { name: 'moved in', words: /\bmoved in\b/ },
  { name: 'accept copper for', words: /\baccepts? copper\b/ },
  { name: 'shares water with', words: /\bshares? water\b/ },
  { name: 'meter to', words: /\bmeter (?:to|max)\b|\breads (?:up )?to\b/, dimension: 'level' },
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
  // "Tests a day" and the like are no length of a hold.
  { name: 'days', words: /^(?!.*(?:\b(?:a|per|each|every)|\/) ?days?\b).*\bdays?\b/, dimension: 'days' },
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
