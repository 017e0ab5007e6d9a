import type { FormName } from '../dose/forms.js';
import type { Fact, FactKind } from '../words/fact.js';

/** What a fact in a note calls for. */
interface Noticed {
  readonly severity: (fact: Fact, form: FormName | null) => 'danger' | 'warning' | 'note';
  /** Said only while copper is in the water. */
  readonly onlyWithCopper?: true;
  readonly step: string;
  readonly why: string;
}

const danger = (): 'danger' => 'danger';
const warning = (): 'warning' => 'warning';
const note = (): 'note' => 'note';
const unlessSulfate = (_: Fact, form: FormName | null): 'danger' | 'warning' =>
  form === 'sulfate' ? 'warning' : 'danger';
const inWater = ({ name }: Fact): 'danger' | 'warning' =>
  /formal|formol|peroxide|h2o2|oxigen water|oxygenated water/i.test(name) ? 'danger' : 'warning';
const frees = 'Binders and reducing dechlorinators set copper free from amine and chelated products.';
const takesUp = 'Rock, coral sand, carbon, resin and pads take up copper, and give some of it back later.';
const mixed = 'Medicines with copper strain the fish together; an aquatic veterinarian decides.';
const airFirst = 'Without moving water the oxygen is used up within hours, and ammonia follows.';

/** By kind; what is not here is raised by other rules or by none. */
export const noticed: Partial<Readonly<Record<FactKind, Noticed>>> = {
  'power or pump off': {
    severity: danger,
    step: 'give air, no food, no dose; test ammonia soon after it is back, and a day later',
    why: airFirst,
  },
  'broken heater': {
    severity: danger,
    step: 'switch off at the wall before a hand goes in, then restore the temperature slowly, a degree an hour',
    why: 'A broken heater may put current into the water, or cook or chill the fish.',
  },
  leak: {
    severity: danger,
    step: 'switch off at the wall before a hand goes in',
    why: 'Water and current, and a volume that is no longer that of the card.',
  },
  'all fish at the surface': { severity: danger, step: 'give air, then test ammonia and oxygen', why: airFirst },
  ammonia: {
    severity: danger,
    step: 'dilute it with new water at the level of the tank, and compare an in-tank indicator',
    why: 'Ammonia is the main killer in quarantine.',
  },
  invertebrates: {
    severity: danger,
    onlyWithCopper: true,
    step: 'take it out of the copper',
    why: 'Copper kills invertebrates of every kind.',
  },
  'ammonia binder': {
    severity: unlessSulfate,
    step: 'look at the fish every hour at first, and dose nothing',
    why: frees,
  },
  'reducing dechlorinator': {
    severity: unlessSulfate,
    step: 'look at the fish every hour at first, and dose nothing',
    why: frees,
  },
  hyposalinity: {
    severity: danger,
    onlyWithCopper: true,
    step: 'no copper; raise the salinity slowly, over days',
    why: 'Copper is more poisonous in water of low salinity.',
  },
  overdose: {
    severity: danger,
    step: 'test copper, then change water to the aim, at most half at once',
    why: 'Copper is a poison with a narrow margin.',
  },
  medicines: {
    severity: inWater,
    onlyWithCopper: true,
    step: 'test oxygen, and ask an aquatic veterinarian whether both may go together',
    why: mixed,
  },
  absorbers: { severity: warning, onlyWithCopper: true, step: 'take it out, and test before each dose', why: takesUp },
  'copper in the top-off': {
    severity: warning,
    onlyWithCopper: true,
    step: 'top off with water without copper, mix half an hour, then test',
    why: 'Copper does not evaporate: copper in the top-off raises the level day by day.',
  },
  'wrong bottle': {
    severity: warning,
    step: 'test copper before anything else is dosed',
    why: 'What went in is not what the log counts.',
  },
  'dosed twice': {
    severity: warning,
    step: 'test copper, and dose nothing before',
    why: 'Two doses for one take the level past the plan.',
  },
  'new kit or meter': {
    severity: warning,
    step: 'compare both on one glass of water before a dose',
    why: 'A step between two kits looks like copper gained or lost.',
  },
  'signs: not copper': {
    severity: warning,
    step: 'treat for something else; an aquatic veterinarian decides',
    why: 'Copper does not reach slime disease, sores, flukes and worms.',
  },
  'UV and ozone': {
    severity: note,
    onlyWithCopper: true,
    step: 'test copper more often',
    why: 'UV and ozone may break copper complexes.',
  },
  'gear or water from another tank': {
    severity: note,
    step: 'keep nets, hoses and water apart',
    why: 'Shared gear carries disease from tank to tank.',
  },
  'a dosing pump': {
    severity: note,
    step: 'count what it doses in the log',
    why: 'A dose that is in no row looks like a fault of the tests.',
  },
};
