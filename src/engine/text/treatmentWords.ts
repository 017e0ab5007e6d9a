import type { ConditionKey } from '../fish/condition.js';
import type { CopperEffect, Remedy, Timing } from '../fish/treatment.js';
import { praziquantelBath, secondBath } from '../fish/treatments.js';

/** A condition's name with the parasite's own, where it has one. */
export const conditionWords: Readonly<Record<ConditionKey, string>> = {
  'white-spot': 'white spot (Cryptocaryon irritans)',
  velvet: 'velvet (Amyloodinium ocellatum)',
  trichodina: 'Trichodina',
  brooklynella: 'Brooklynella',
  uronema: 'Uronema',
  flukes: 'flukes (monogeneans, Neobenedenia and gill flukes among them)',
  'black-spot': 'black spot (turbellarians, Paravortex)',
  bacterial: 'bacterial',
  worms: 'intestinal worms',
  lymphocystis: 'lymphocystis',
  unknown: 'unknown',
};

/** What copper does. */
export const copperWords: Readonly<Record<CopperEffect, string>> = {
  'stops-reinfection': 'kills the free-swimming stage only: stops reinfection, gives no immediate relief',
  'not-treated': 'does not treat it',
  'not-reached': 'does not treat it: it sits under the skin',
  disputed: 'sources disagree, so copper days never count for flukes',
  'only-some': 'treats white spot, velvet and Trichodina only: no copper on a guess',
  other: '',
};

/** What to give. Drugs by their generic names. */
export const remedyWords: Readonly<Record<Remedy, string>> = {
  copper: 'copper, in the band of its form (QT.BAND)',
  'copper-in-public-aquaria':
    'copper sulfate at 0.18–0.21 mg/L free copper, raised over 3–5 days: the course of a public aquarium',
  'copper-alone-not-enough':
    'not copper alone: one source lists flukes among what it treats, but keepers see them survive it',
  'no-copper-for-this-fish':
    'no copper: moves between bare tanks, low salinity or another medicine; never low salinity with copper',
  'fallow-display': 'no fish in the display where it was seen',
  formalin: 'formalin, through a veterinarian, where it is legal',
  'metronidazole-with-copper': 'metronidazole; weak evidence, no study in sea water found',
  'metronidazole-perhaps': 'metronidazole may help, uncertain; no study in sea water found',
  'praziquantel-bath': `praziquantel bath; ${praziquantelBath} mg/L in a study of how long it lasts`,
  'praziquantel-again': `second praziquantel bath, about day ${secondBath.from} to day ${secondBath.to} at 25 °C`,
  praziquantel: 'praziquantel bath',
  'praziquantel-with-copper': 'praziquantel together with copper',
  antibiotic: 'an antibiotic that the veterinarian chooses',
  'praziquantel-in-food': 'praziquantel in the food, against tapeworms',
  'fenbendazole-in-food': 'fenbendazole or levamisole in the food, against roundworms',
  'water-tests': 'tests of ammonia, oxygen and copper',
  'good-water': 'good water and food',
  microscope: 'skin scrape and gills under a microscope',
  nothing: 'no medicine: it is a virus, and usually clears up by itself',
  chloroquine: 'chloroquine phosphate, through a veterinarian',
  veterinarian: 'an aquatic veterinarian decides',
};

/** When, in what order, and beside what. */
export const timingWords: Readonly<Record<Timing, string>> = {
  'thirty-days': '30 unbroken days in the band',
  'thirty-days-of-white-spot': '30 unbroken days in the band: young hatch for up to 28 days and live up to 2',
  'twenty-one-days': '21 days in the band, salinity 25 g/L and over; others hold 30',
  'within-a-day': 'with the disease showing: in the band within 24 h, round the clock; the delay is the greater risk',
  'if-velvet-likely':
    'if white spot or velvet is likely and fish breathe fast: in the band within 24 h; the delay is the greater risk',
  'intolerant-fish': 'for a fish that must not have copper (QT.TOLERANCE)',
  'fallow-days': '76 days at 24 °C or warmer',
  'at-once': 'at once: it kills in days',
  'beside-copper': 'may run alongside copper that is given for something else',
  early: 'early, before it goes deep; may run alongside copper',
  'before-or-after-copper': 'before or after copper',
  'bath-fades': 'before or after copper; a first bath was gone in 8 ± 1 days, later ones in 2',
  'whatever-the-hold': 'however long the hold',
  'second-bath': 'after the eggs have hatched (5–6 days) and before the young lay (10–11 days more)',
  emergency: 'with copper only in an emergency; otherwise before or after it',
  'after-culture': 'after a culture if there is time; before or after copper',
  'with-food': 'while the fish eats; before or after copper',
  'instead-of-copper': 'instead of copper, not with it',
  first: 'first: velvet, flukes and ammonia look the same',
  'first-ammonia': 'first: ammonia is the main killer in quarantine',
  'before-any-dose': 'before the first dose of anything, if the fish can wait',
  meanwhile: 'for weeks; copper does not help',
  always: 'before any medicine; a prescription may be needed, and local law and the label come first',
};
