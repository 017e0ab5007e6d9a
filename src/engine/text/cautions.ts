import { copperCriteria, timesAcuteCriterion } from '../chemistry/timesAcuteCriterion.js';
import { copperForms } from '../dose/forms.js';
import { shownNumber } from '../units/shown.js';
import { columnsOf, type Table } from '../result/table.js';

const aim = copperForms.sulfate.aim;
const acute = shownNumber(1000 * copperCriteria.saltWaterAcute);
const times = Math.round(timesAcuteCriterion(aim));

/** What the software says wherever copper is used. Sources and how far they were read stand in brackets. */
export const cautions: readonly string[] = [
  'Copper salts are a poison: harmful if swallowed, serious eye damage, very toxic to aquatic life with long lasting effects (ILO/WHO ICSC 1416, seen).',
  'Wear gloves and goggles when handling the salt or its solutions; keep both labelled, locked away from children and pets, and away from food.',
  'Never use copper in a tank with invertebrates (corals, anemones, shrimps, crabs, snails, live rock): it kills most of them (UF/IFAS FA165, opening seen, numbers from memory).',
  'Never treat fish meant for eating.',
  'The margin is narrow: fish die inside the therapeutic band too; no level is without risk (Zec, Hadfield, Hungerford 2021, seen: 199 of 4,835 fish died).',
  'A band belongs to one chemical form: never use the band of another, and test with a test for that form, since a test for free copper reads complexed copper low (common practice).',
  'A computed dose is checked by a test before the next: never dose on an untested level (common practice).',
  'Never use water conditioners, reducing dechlorinators or ammonia binders with copper: they set it free from amine and chelated products and can kill in hours (common practice).',
  'Copper does not treat everything: not Brooklynella, Uronema, flukes, bacteria or internal worms (common practice; sources disagree on flukes).',
  'Not eating, lethargic or breathing heavily: test ammonia, oxygen and copper first, since disease, ammonia and copper look the same (common practice).',
  `Treated water goes to no sea, stream or storm drain: the acute salt-water criterion is ${acute} µg/L (40 CFR 131.38, seen), and ${aim.toFixed(2)} mg/L is ${times} times that. Dispose of water, solution and salt as local rules require.`,
  `The drinking-water action level, ${shownNumber(copperCriteria.drinkingWaterAction)} mg/L, is never a discharge limit (from memory).`,
  'Copper comes back off silicone and sand for weeks: test 48 h and 7 days after the last change, and keep no invertebrates in a tank that was treated (common practice).',
  'Medicines may need a prescription: an aquatic veterinarian decides.',
  'Local law and the label come before anything computed here.',
];

export const cautionsColumns = columnsOf({ Caution: 'text' });

/** CAUTIONS as a table. */
export function cautionsTable(): Table {
  return { columns: cautionsColumns, rows: cautions.map((caution) => [caution]) };
}
