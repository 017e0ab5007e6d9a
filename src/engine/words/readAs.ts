import type { Fact, FactKind, Polarity } from './fact.js';

/** What each kind is called where a keeper reads how a text was understood. */
const names: Readonly<Record<FactKind, string>> = {
  'fish in': 'fish in',
  'fish out': 'fish out',
  deaths: 'deaths',
  'dead on arrival': 'deaths',
  invertebrates: 'invertebrates',
  ammonia: 'ammonia',
  medicines: 'medicines',
  'dip, bath or bucket': 'medicines',
  absorbers: 'absorbers in',
  'ammonia binder': 'binders',
  'reducing dechlorinator': 'binders',
  disease: 'disease',
  'signs: disease': 'signs',
  'signs: not copper': 'signs',
  'signs: intolerance': 'signs',
  'signs: other': 'signs',
  'all fish at the surface': 'signs',
  'power or pump off': 'mishaps',
  'broken heater': 'mishaps',
  leak: 'mishaps',
  'wrong bottle': 'mishaps',
  'dosed twice': 'mishaps',
  'missed dose': 'mishaps',
  overdose: 'mishaps',
  'copper in the top-off': 'copper in the top-off',
  'gear or water from another tank': 'gear or water from another tank',
  'UV and ozone': 'UV and ozone',
  'a dosing pump': 'a dosing pump',
  'copper taken out': 'absorbers in',
  hyposalinity: 'medicines',
  'new kit or meter': 'mishaps',
};

const polarities: Readonly<Record<Polarity, string>> = {
  now: '',
  ended: ' (ended)',
  denied: ' (denied)',
  planned: ' (planned)',
  hearsay: ' (hearsay)',
  'other tank': ' (another tank)',
};

/** How facts read, each kind once, joined by `; `; '' where there is none. */
export function readAs(facts: readonly Fact[]): string {
  return [...new Set(facts.map(nameOf))].join('; ');
}

function nameOf({ kind, polarity }: Fact): string {
  if (kind === 'absorbers' && polarity === 'ended') return 'absorbers out';
  return `${names[kind]}${polarities[polarity]}`;
}
