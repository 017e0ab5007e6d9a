import { distance } from 'fastest-levenshtein';

/** Words that decide, and are often mistyped. */
const keyWords =
  'ammonia indicator carbon praziquantel metronidazole formalin peroxide antibiotic conditioner detoxifier dechlorinator thiosulfate aragonite charcoal velvet brooklynella scratching flashing lethargic breathing gasping appetite surface heater thermostat leaking leak quarantine display circulation electricity invertebrate anemone urchin hermit shrimp snail crab ozone doser hyposalinity salinity overdose twice forgot missed bottle copper arrival deceased mortality'.split(
    ' ',
  );
const known = new Set(
  'velvety carton cartons surfaced heated breeding heating lead beak bottled copped wheater missing display displays leaks leaving leaved reading'.split(
    ' ',
  ),
);
const byLetter = new Map<string, string[]>();
for (const word of keyWords) byLetter.set(word[0] ?? '', [...(byLetter.get(word[0] ?? '') ?? []), word]);

const remembered = new Map<string, string>();
const most = 5_000;

/** The word that a mistyped one stands for; itself where it stands for none. */
function meant(word: string): string {
  const before = remembered.get(word);
  if (before !== undefined) return before;
  const found = isRight(word) ? undefined : byLetter.get(word[0] ?? '')?.find((right) => isSlip(word, right));
  if (remembered.size >= most) remembered.clear();
  remembered.set(word, found ?? word);
  return found ?? word;
}

function isRight(word: string): boolean {
  return known.has(word) || keyWords.some((right) => word === right || word === `${right}s` || word === `${right}es`);
}

/** Two letters exchanged, or one letter of seven and two of ten. */
function isSlip(word: string, right: string): boolean {
  if (Math.abs(word.length - right.length) > 2) return false;
  if (word.length === right.length && isExchanged(word, right)) return true;
  const slips = right.length >= 10 ? 2 : right.length >= 7 ? 1 : 0;
  return slips > 0 && distance(word, right) <= slips;
}

function isExchanged(word: string, right: string): boolean {
  let at = 0;
  while (at < word.length && word[at] === right[at]) at++;
  return (
    word[at] === right[at + 1] &&
    word[at + 1] === right[at] &&
    word.slice(at + 2) === right.slice(at + 2) &&
    at < word.length
  );
}

/** A clause in small letters with the words that decide spelt right. */
export function corrected(low: string): string {
  return low
    .replace(/\b(did|does|do|is|was|are|were|has|have|had|wo|could|should|would|ca)nt\b/g, "$1n't")
    .replace(/\b[a-z]{4,16}\b/g, meant);
}
