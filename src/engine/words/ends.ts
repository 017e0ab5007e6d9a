import type { Clause } from './clauses.js';
import type { FactKind } from './fact.js';

const taken =
  /\b(?:out|removed?|gone|pulled|took|taken|take|chucked|binned|tossed|fished out|retrieved|caught|got (?:him|her|it|them) out|back (?:on the|in the (?:cupboard|box|drawer)|to)|discarded|dismantling|emptied|unplugged|bypassed|disconnected|off|ended|finished|stopped|cancelled|moved back|switched off|turned off|withdrawn|rinsed away|ran out|shelved|i remove)\b/;
const repaired =
  /\b(?:back(?: on| up)?|restored|replaced|fixed|repaired|running again|runs|took [a-z0-9]+'s|mended|sealed|resolved|plugged (?:it )?back|works again|ok again|signed off|gen(?:erator)? on|swapped|sorted|stopped leaking|patched|\d{4}-\d{4})\b/;
const over =
  /\b(?:resolved|gone|over(?: now)?|disappear\w*|disapear\w*|cleared|healed|closed?|granulated|back (?:to normal|down|in (?:the )?spring)|bedded in|vanish\w*|subsided|faded|none now|last (?:month|tuesday|week|year)|all over now|fell off|previous owner|y(?:ears?)? ago|then normal|stopped|recovered)\b/;
const compared =
  /\b(?:same|ok|compared|side by side|agree|identical|match(?:es|ed)?|vs (?:the )?old (?:kit|on|one)|released|0[.,]19 \/ 0[.,]19)\b/;

const kinds: Partial<Record<FactKind, RegExp>> = {
  invertebrates: taken,
  absorbers: taken,
  medicines: /\b(?:finished|ended|stopped|done|over|last (?:year|month)|washed out)\b/,
  'UV and ozone': /\b(?:off|unplugged|bypassed|removed|moved back|switched off|disconnected|out)\b/,
  'a dosing pump': /\b(?:unplugged|back in the|removed|disconnected|off|switched off|retired|by hand again)\b/,
  'copper in the top-off': /\b(?:emptied|replaced|now only|drained|dumped|rinsed|flushed)\b/,
  'power or pump off': repaired,
  'broken heater': repaired,
  leak: repaired,
  'new kit or meter': compared,
  ammonia: over,
  disease: over,
  'signs: disease': over,
  'signs: not copper': over,
  'signs: other': over,
  'signs: intolerance':
    /\b(?:eating again|resumed|recovered|then normal|gone|stopped gasping|back to normal|ate like|come back|easier|but fine now)\b/,
  'all fish at the surface': /\b(?:back down|resolved|over now|all down)\b/,
  deaths: /\b(?:last (?:month|year|summer)|closed case|necropsy)\b/,
};

/** Not ends, though they hold the words of one. */
const stands: Partial<Record<FactKind, RegExp>> = {
  absorbers:
    /\b(?:still|forgot to (?:remove|take)|(?:did ?n'?t|did not|not) (?:remove|taken?|pull)\w*|pulling cu|copper out|out of (?:the )?(?:dt|display|reef)|from (?:the )?(?:dt|display|reef)|from [A-Z]|took copper|copper comes out|the smell out|copper's coming out|moved)\b|want it out|get the smell out|take(?:s)? (?:the )?copper out/,
  ammonia: /\bgone (?:the|a|to|all)?\s*(?:colou?r|green|blue|dark|teal|lime)/,
  invertebrates: /\bout at the next\b|\bstill (?:in|here)\b/,
  'power or pump off': /\b(?:still out|no backup|not back|off since)\b/,
  'broken heater': /\b(?:not replaced)\b/,
  'signs: not copper': /\bfell off like\b|coming off|comes off|com(?:es|ing) away/,
  'UV and ozone': /\bis on\b/,
  medicines: /\bbefore\b/,
};

/** What is repaired is said after it is said to have broken. */
const repairedLater: readonly FactKind[] = ['power or pump off', 'broken heater', 'leak'];

/** Whether a clause, or for what breaks the rest of its sentence, says that a fact of a kind is over. */
export function isEnded(kind: FactKind, { low }: Clause, rest: string): boolean {
  const words = repairedLater.includes(kind) ? `${low} ${rest}` : low;
  return (kinds[kind]?.test(words) ?? false) && !(stands[kind]?.test(words) ?? false);
}
