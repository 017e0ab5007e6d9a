/**
 * The functions of this release as people's workbooks store them: once shipped, a name and an argument's place never
 * change, and new ones come last. Optional arguments stand in brackets.
 */
const waterAndStrength = [
  'NETVOLUME(length, width, water depth, [sand depth], [displaced], [plus])',
  'VOLUMEBYDOSE(added mL, strength, before, after, [accuracy])',
  'STRENGTH(dose mL, treats L, raises mg/L)',
  'STOCKSTRENGTH(grams, litres, [salt])',
  'STOCKGRAMS(strength, litres, [salt])',
  'THIN(strength, wanted strength, mL)',
  'MGPERL(reading)',
];
const dosing = [
  'DOSE(volume, level, wanted, strength, [form])',
  'RISE(volume, added mL, strength)',
  'DOSESPLIT(total mL, doses a day, [days], [first dose at], [hours between], [smallest mL])',
  'RAMP(volume, level, wanted, strength, start, [pace], [doses a day], [form], [smallest mL])',
];
const waterChanges = [
  'CHANGEDOSE(change, level, strength, [volume])',
  'AFTERCHANGE(volume, level, change, [replacement level])',
  'AFTEREVAPORATION(full volume, level, lost)',
  'CHANGETOLOWER(volume, level, wanted, [replacement level])',
  'CHANGESTOCLEAR(level, wanted, percent)',
  'LOSSRATE(when, copper, [rise])',
];
const hold = [
  'BAND(form)',
  'HOLDDAYS(when, copper, band, [as of], [arrived], [longest gap], [confirm])',
  'HOLDSTART(when, copper, band, [as of], [arrived], [longest gap], [confirm])',
  'HOLDENDS(when, copper, band, [days], [arrived], [longest gap], [confirm])',
  'HOLDROWS(when, copper, band, [as of], [arrived], [longest gap], [confirm])',
  'HOLDS(when, copper, band, [days], [arrived], [longest gap], [confirm])',
];
const fish = ['TOLERANCE(fish)', 'TREATMENTFOR(condition)'];
const waterQuality = [
  'FREEAMMONIA(total, pH, temperature, salinity, [as])',
  'AMMONIACHANGE(volume, ammonia, wanted, level, strength)',
  'SALINITY(specific gravity, temperature, [reference])',
  'SPECIFICGRAVITY(salinity, temperature, [reference])',
];
const plan = [
  'SIGNS(when, signs)',
  'PLAN(start, form, [days], [pace], [other medicines])',
  'OBSERVEUNTIL(ended, [level], [form])',
];
const trust = [
  'HOLDCHANCE(when, copper, band, accuracy, [percent], [drift])',
  'AIM(band, accuracy, [percent], [chance])',
  'METERFITS(band, reads from, reads to, accuracy, [percent])',
];
const wholeLog = [
  'HEADINGS(log)',
  'CARD(card)',
  'LEVELS(log, card)',
  'AUDIT(log, card, [as of])',
  'DONOW(log, card, as of)',
  'READY(log, card, as of)',
  'FISHDAYS(log, card, [as of])',
  'DEATHS(log, card)',
  'SYSTEMS(log, cards, as of)',
  'NOTES(log)',
];
const checks = ['SELFCHECK()', 'CAUTIONS()'];

export interface ContractFunction {
  readonly name: string;
  readonly required: readonly string[];
  readonly optional: readonly string[];
}

export const contract: readonly ContractFunction[] = [
  ...waterAndStrength,
  ...dosing,
  ...waterChanges,
  ...hold,
  ...fish,
  ...waterQuality,
  ...plan,
  ...trust,
  ...wholeLog,
  ...checks,
].map((signature) => {
  const [name = '', list = ''] = signature.slice(0, -1).split('(');
  const words = list === '' ? [] : list.split(', ');
  return {
    name,
    required: words.filter((word) => !word.startsWith('[')),
    optional: words.filter((word) => word.startsWith('[')).map((word) => word.slice(1, -1)),
  };
});

/** The unit that an argument's description shows in square brackets, by the contract's word for the argument. */
export const unitOf: Readonly<Record<string, string>> = {
  length: 'cm',
  width: 'cm',
  'water depth': 'cm',
  'sand depth': 'cm',
  displaced: 'L',
  plus: 'L',
  volume: 'L',
  'full volume': 'L',
  change: 'L',
  lost: 'L',
  litres: 'L',
  'treats L': 'L',
  grams: 'g',
  mL: 'mL',
  'added mL': 'mL',
  'dose mL': 'mL',
  'total mL': 'mL',
  'smallest mL': 'mL',
  strength: 'mg/mL',
  'wanted strength': 'mg/mL',
  level: 'mg/L',
  wanted: 'mg/L',
  before: 'mg/L',
  after: 'mg/L',
  accuracy: 'mg/L',
  'raises mg/L': 'mg/L',
  'replacement level': 'mg/L',
  copper: 'mg/L',
  rise: 'mg/L',
  reading: 'mg/L',
  total: 'mg/L',
  ammonia: 'mg/L',
  salinity: 'g/kg',
  temperature: '°C',
  reference: '°C',
  percent: '%',
  pH: 'NBS',
  days: 'days',
  'hours between': 'h',
  'longest gap': 'h',
  'reads from': 'mg/L',
  'reads to': 'mg/L',
  drift: 'mg/L',
  chance: '%',
};
