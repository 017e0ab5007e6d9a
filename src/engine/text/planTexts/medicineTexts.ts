import * as limits from '../../limits/limits.js';
import { shown, shownNumber } from '../../units/shown.js';
import type { WarnedMedicine } from '../../plan/medicineOf.js';
import { named } from '../sourceText.js';
import type { PlanText, PlanTexts } from './planTexts.js';

const warnings: Readonly<Record<WarnedMedicine, PlanText>> = {
  formalin: {
    doing:
      'formalin: not scheduled here; only through an aquatic veterinarian, where legal, and not together with copper on your own',
    why: 'common practice: formalin against Brooklynella goes through a veterinarian; together with copper from memory',
  },
  binder: {
    doing: 'danger: keep it out while copper is in; dilute ammonia with matched water instead, see QT.AMMONIACHANGE',
    why: 'common practice: it sets copper free from amine and chelated products and can kill in hours; it also falsifies tests (from memory)',
  },
  'low-salinity': {
    doing: 'danger: no low-salinity treatment together with copper',
    why: `from memory: copper does more harm at low salinity; copper below ${limits.salinityWarning.value} g/kg is a warning (${named('ZecHadfieldHungerford2021')})`,
  },
  'copper-remover': {
    doing: 'take it out of the filter before the first dose; use it when copper goes out',
    why: 'common practice: it takes up copper, so the level falls',
  },
  'more-copper': {
    doing: 'danger: only one copper product at a time; this plan is for the form you gave',
    why: 'common practice: two forms add up, and no one band or test fits the mixture',
  },
};

/** Other medicines in the plan. */
export const medicineTexts = {
  'warned-medicine': ({ medicine, given }) => {
    const { doing, why } = warnings[medicine];
    return { doing: `${shown(given)}: ${doing}`, why };
  },
  'unknown-medicine': ({ given }) => ({
    doing: `${shown(given)}: not known here and not scheduled; ask an aquatic veterinarian before using it with copper`,
    why: 'no rule here: what it does together with copper is not known',
  }),
  metronidazole: () => ({
    doing: 'metronidazole: may run together with copper; dose and days from an aquatic veterinarian',
    why: 'common practice, weak evidence: no study of its effect in marine fish was found',
  }),
  praziquantel: ({ from, until }) => ({
    doing: `praziquantel, first bath: after copper, from here on, once the copper tests read none; or before copper, with both baths done by the first dose (the first ${shownNumber(from)} to ${shownNumber(until)} days ahead of the second)`,
    why: `common practice: before or after copper, together only in an emergency; days under copper never count for flukes; a first 2 mg/L bath is gone in 8 ± 1 days (${named('ThomasEtAl2016')})`,
  }),
  'second-praziquantel': ({ from, until }) => ({
    doing: `praziquantel, second bath: between now and ${shownNumber(until - from)} days from now, day ${shownNumber(from)} to ${shownNumber(until)} after the first at 25 °C; cooler water takes longer`,
    why: `derived: eggs outlive the bath, hatching begins at ${limits.hatchingFirst.value}–${limits.hatchingLast.value} days, maturity at ${limits.flukeMaturity.value}–11 (${named('BondadReantasoEtAl1995')})`,
  }),
} satisfies Partial<PlanTexts>;
