import { isoFromSerial } from '../../../base/isoFromSerial.js';
import { shownNumber } from '../../units/shown.js';
import { toleranceReasons } from '../toleranceReasons.js';
import type { ByFindingCode, FindingSentences } from './findingWords.js';

/** Fish, deaths and signs, salinity, ammonia, and what was added to the water. */
export const fishAndWaterFindings = {
  'conditioner-noted': ({ words }) => ({
    finding:
      `"${cut(words)}" is noted: watch the fish now, test copper, change water with new water at the tank's level, ` +
      `and add none again.`,
    why: 'Ammonia binders, detoxifying conditioners and reducing dechlorinators set copper free from amine and chelated products and can kill within hours.',
  }),
  'low-salinity': ({ salinity, limit, ofCard }) => ({
    finding:
      `Salinity ${rounded(salinity)} g/kg${ofCard ? ' on the card' : ''} is below ${limit} with copper in the water: ` +
      `${limit < 25 ? 'bring copper down or salinity up slowly, and let an aquatic veterinarian decide which' : 'raise it slowly to 25 or more'}.`,
    why: 'The published copper treatment was run at 25 g/kg and over; under 20, or with a low-salinity treatment, copper is a danger (from memory).',
  }),
  'low-salinity-treatment': ({ words }) => ({
    finding: `"${cut(words)}" is noted with copper in the water: choose one of the two treatments, never both at once.`,
    why: 'Copper together with a low-salinity treatment is a danger to the fish (from memory).',
  }),
  'copper-intolerant-fish': ({ fish, listedAs, advice, reason }) => ({
    finding:
      `${cut(fish)}${sameName(fish, listedAs) ? '' : ` (read as ${listedAs})`}: advice "${advice}" for copper; take ` +
      `${advice === 'never' ? 'it' : 'this fish'} out of copper water and use another treatment.`,
    why: toleranceReasons[reason],
  }),
  deaths: ({ count, hours, lot, lots, of }) => ({
    finding:
      `${fish(count)}${lots > 1 ? ` of ${lots} lots` : ofLot(lot)} died ${hours < 0.05 ? 'in one entry' : `within ${rounded(hours, 1)} h`}` +
      `${of === null ? '' : `, ${rounded((100 * count) / of, 1)} % of ${of}`}: test ammonia, oxygen and copper now, ` +
      `and call an aquatic veterinarian.`,
    why: 'Three deaths, or a tenth of a lot, within 24 hours point to the water or to a disease that copper does not treat.',
  }),
  'death-noted': ({ count, onArrival, lot }) => ({
    finding:
      onArrival >= count
        ? `${fish(count)}${ofLot(lot)} dead on arrival: kept apart from the deaths in treatment.`
        : `${fish(count)}${ofLot(lot)} died: test ammonia, oxygen and copper, and look at the others.`,
    why: 'Fish die inside the band too: every death is counted, see QT.DEATHS.',
  }),
  'first-signs': ({ text }) => ({
    finding:
      `"${cut(text)}": test ammonia, oxygen and copper first; if all three are as they should be and the fish has been ` +
      `in over 48 h, lower the level until it eats, which breaks the hold.`,
    why: 'Velvet, flukes and ammonia look the same as trouble with copper.',
  }),
  'second-signs': ({ text, first }) => ({
    finding:
      `"${cut(text)}" is the second time of signs${first === null ? '' : ` (the first: row ${first.row}, ${isoFromSerial(first.when)})`}: ` +
      `stop copper and use another treatment, as an aquatic veterinarian decides.`,
    why: 'Signs a second time, after a recovery or three clear days, mean that this fish does not bear copper, or has something copper does not treat.',
  }),
  'unionised-ammonia': ({ free, total, limit }) => ({
    finding:
      `Un-ionised ammonia is ${rounded(free, 3)} mg/L NH3${total === null ? '' : `, from ${rounded(total.written)} mg/L total (as ${total.as})`}, ` +
      `${limit.toFixed(2)} or more: ${ammoniaAdvice(limit)}.`,
    why: 'Ammonia is the main killer in quarantine: 0.02 mg/L NH3 is noted, 0.05 a warning, 0.10 a danger. A liquid test may read falsely positive in copper.',
  }),
  'ammonia-outside-range': ({ total, field, given, min, max }) => ({
    finding:
      `Ammonia ${rounded(total)} mg/L cannot be turned into NH3 at ${field} ${rounded(given)}, outside ${min} to ${max}: ` +
      `test again, or judge it by the in-tank indicator.`,
    why: 'The sea-water formula holds from pH 7.5 to 8.5, 5 to 35 °C and 5 to 35 g/kg.',
  }),
  'ammonia-not-judged': ({ total, missing }) => ({
    finding: `Ammonia ${rounded(total)} mg/L cannot be judged without ${inWords(missing)}: write it in the row or on the card.`,
    why: 'How much of the total is poisonous depends on pH, temperature and salinity.',
  }),
  'liquid-ammonia-test': ({ total }) => ({
    finding: `${total === null ? 'A liquid ammonia test' : `Ammonia ${rounded(total)} mg/L`} under copper: confirm it by an in-tank indicator, which still works.`,
    why: 'Liquid ammonia tests read falsely positive in copper-treated water.',
  }),
} satisfies Partial<FindingSentences>;

/** A keeper's own words are repeated so far. [letters] */
const longest = 60;

function cut(text: string): string {
  const letters = Array.from(text.replace(/\s+/g, ' ').trim());
  return letters.length <= longest ? letters.join('') : `${letters.slice(0, longest - 1).join('')}…`;
}

function rounded(x: number, places = 2): string {
  return shownNumber(Number(x.toFixed(places)));
}

function fish(count: number): string {
  return count === 1 ? '1 fish' : `${count} fish`;
}

function ofLot(lot: string): string {
  return lot === '' ? '' : ` of lot ${cut(lot)}`;
}

function sameName(written: string, listed: string): boolean {
  const key = (name: string): string =>
    name
      .toLowerCase()
      .replace(/[^\p{L}]/gu, '')
      .replace(/s$/, '');
  return key(written) === key(listed);
}

function inWords(names: readonly string[]): string {
  const [last = ''] = names.slice(-1);
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

function ammoniaAdvice(limit: ByFindingCode['unionised-ammonia']['limit']): string {
  if (limit < 0.05) return 'feed less and test again today';
  return 'change water now, with new water at the level of the tank (QT.AMMONIACHANGE), and add no binder';
}
