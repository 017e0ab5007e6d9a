import type { Log } from '../log/table/log.js';
import { columnsOf, type Table } from '../result/table.js';
import { saidTexts, type SaidText } from '../rules/saidTexts.js';
import { isUnderstood } from '../rules/isUnderstood.js';
import type { FactKind } from '../words/fact.js';
import { readAs } from '../words/readAs.js';

export const notesColumns = columnsOf({
  When: 'time',
  Row: 'number',
  Text: 'text',
  'Read as': 'text',
  'Used for': 'text',
});

/** What a fact that stands now counts for; the others count for nothing but being told apart. */
const uses: Readonly<Record<FactKind, string>> = {
  'fish in': 'newcomers and their days',
  'fish out': 'fish moved early',
  deaths: 'deaths',
  'dead on arrival': 'deaths, as dead on arrival',
  invertebrates: 'invertebrate in copper',
  ammonia: 'ammonia in words',
  medicines: 'another medicine with copper',
  'dip, bath or bucket': 'a dip, not this tank',
  absorbers: 'absorber',
  'ammonia binder': 'ammonia binder',
  'reducing dechlorinator': 'reducing dechlorinator',
  disease: 'disease',
  'signs: disease': 'signs of disease',
  'signs: not copper': 'signs that copper does not treat',
  'signs: intolerance': 'signs of intolerance',
  'signs: other': 'other signs',
  'all fish at the surface': 'all fish at the surface',
  'power or pump off': 'power or pump off',
  'broken heater': 'broken heater',
  leak: 'leak',
  'wrong bottle': 'wrong bottle',
  'dosed twice': 'dosed twice',
  'missed dose': 'missed dose',
  overdose: 'overdose',
  'copper in the top-off': 'copper in the top-off',
  'gear or water from another tank': 'gear or water from another tank',
  'UV and ozone': 'UV and ozone',
  'a dosing pump': 'a dosing pump',
  'copper taken out': 'copper taken out',
  hyposalinity: 'low salinity with copper',
  'new kit or meter': 'kits to compare',
};

/** The texts of a log and how each was understood, as NOTES spills them. */
export function notesTable(log: Log): Table {
  return {
    columns: notesColumns,
    rows: saidTexts(log).map((said) => [
      log.when[said.entry] ?? '',
      log.row[said.entry] ?? '',
      said.text,
      readingOf(said),
      usedFor(said),
    ]),
  };
}

function readingOf(said: SaidText): string {
  if (said.facts.length > 0) return readAs(said.facts);
  if (!isUnderstood(said)) return 'not understood';
  return said.column === 'note' ? 'signs' : said.column === 'dead' ? 'deaths' : said.column;
}

function usedFor({ facts }: SaidText): string {
  return [...new Set(facts.filter(({ polarity }) => polarity === 'now').map(({ kind }) => uses[kind]))].join('; ');
}
