import * as limits from '../../limits/limits.js';
import { hoursPerDay } from '../../units/quantity.js';
import { shownNumber } from '../../units/shown.js';
import { named } from '../sourceText.js';
import type { PlanTexts } from './planTexts.js';

/** After the hold. */
export const afterTexts = {
  'copper-out': () => ({
    doing:
      'copper out: copper-selective resin or polymer pad and water changes (QT.CHANGESTOCLEAR); the water goes to no sea, stream or storm drain, dispose of it as local rules require',
    why: `common practice, carbon alone is inefficient; disposal ${named('CFR131')}, 4.8 µg/L acute in salt water`,
  }),
  'test-after-change': ({ hours }) => ({
    doing: `test copper ${hours === limits.firstTestOut.value ? `${hours} h` : `${hours / hoursPerDay} days`} after the last change; this date takes the last change to be on the day the hold ends; never clear for invertebrates`,
    why: 'common practice: copper comes back off silicone and sand for weeks',
  }),
  sentinel: () => ({
    doing: 'observe with sentinel fish, once a copper test reads none: black mollies acclimated to sea water',
    why: 'common practice: they show disease early',
  }),
  'observe-earliest': ({ form, days, afterPraziquantel }) => ({
    doing: `observe: earliest end, ${shownNumber(days)} days after ${last(afterPraziquantel)}, if there were no signs${form === 'chelated' ? ranLow : ''}`,
    why: twoToFour,
  }),
  'observe-advised': ({ days, afterPraziquantel }) => ({
    doing: `observe: advised end, ${shownNumber(days)} days after ${last(afterPraziquantel)}; in doubt a veterinarian decides`,
    why: twoToFour,
  }),
  'display-fallow': ({ days }) => ({
    doing: `display fallow: fish may go into a display where the disease was seen, if it stood without fish for ${shownNumber(days)} days at ${limits.fallowWarmth.value} °C or warmer; counted here from the first dose`,
    why: `common practice; ${named('CheungEtAl1979')}: cooler water takes longer; a 72-day tail (${named('ColorniBurgess1997')})`,
  }),
} satisfies Partial<PlanTexts>;

/** What both ends of the observation come from. */
const twoToFour = `common practice: ${limits.observeEarliest.value / 7} to ${limits.observeAdvised.value / 7} weeks after any treatment`;

function last(afterPraziquantel: boolean): string {
  return afterPraziquantel ? 'the second praziquantel bath' : 'copper is out';
}

const ranLow =
  '; not before the advised end if the median reading of the hold was under ' +
  `${limits.lowChelatedHold.value.toFixed(2)} mg/L (QT.OBSERVEUNTIL)`;
