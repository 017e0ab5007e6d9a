import { distance } from 'fastest-levenshtein';

/** Medicines and additions that a plan warns of. */
export type WarnedMedicine = 'formalin' | 'binder' | 'low-salinity' | 'copper-remover' | 'more-copper';
type Medicine = WarnedMedicine | 'praziquantel' | 'metronidazole';

/** Generic names, as people write them, in lower case without hyphens; a text that holds one of them names that medicine. */
const names: readonly (readonly [Medicine, RegExp])[] = [
  ['praziquantel', /\b(?:praziquantel|prazi|pzq)\b/],
  ['metronidazole', /\b(?:metronidazole?|metro)\b/],
  ['formalin', /\b(?:formalin|formaldehyde|formol)\b/],
  [
    'binder',
    /\b(?:(?:ammonia|nitrogen) ?(?:binder|detoxifier|remover|neutrali[sz]er|lock)s?|dechlorinat(?:or|er)s?|dechlor|chlorine removers?|(?:water|tap water|detoxifying) conditioners?|conditioners?|(?:sodium )?thiosul(?:ph|f)ate|(?:sodium )?(?:hydroxymethanesul(?:ph|f)onate|di(?:thionite|thionate)))\b/,
  ],
  ['low-salinity', /\b(?:hypo ?salin(?:e|ity)|low salinity|hypo)\b/],
  [
    'copper-remover',
    /\b(?:(?:activated )?(?:carbon|charcoal)|resins?|(?:copper|poly(?:mer)?) (?:pads?|removers?|filters?)|zeolite|gfo|phosphate removers?)\b/,
  ],
  ['more-copper', /\b(?:copper|cupric|chelated|amine)\b|^(?:sul(?:ph|f)ate|citrated?)$/],
];

const longNames = ['praziquantel', 'metronidazole', 'formalin', 'formaldehyde'] as const;
/** Letters that may be wrong in a name of eight and more. */
const slips = 2;

/**
 * The medicine that a keeper's word means; null where it is not known here.
 *
 * Definition: the generic names above; a long name with up to two letters wrong still counts.
 *
 * @param text what was written
 * @returns the medicine, or null
 * @example medicineOf('Praziquantal') // = 'praziquantel'
 */
export function medicineOf(text: string): Medicine | null {
  const words = text
    .toLowerCase()
    .replace(/[-_\s]+/g, ' ')
    .trim();
  const known = names.find(([, pattern]) => pattern.test(words));
  if (known !== undefined) return known[0];
  const meant = longNames.find((name) =>
    words.split(' ').some((word) => word.length >= 7 && distance(word, name) <= slips),
  );
  return meant === 'formaldehyde' ? 'formalin' : (meant ?? null);
}
