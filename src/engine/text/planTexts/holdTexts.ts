import type { Pace } from '../../dose/pacePlan.js';
import * as limits from '../../limits/limits.js';
import { hoursPerDay } from '../../units/quantity.js';
import { shownNumber } from '../../units/shown.js';
import { named } from '../sourceText.js';
import type { PlanTexts } from './planTexts.js';

/** From the first dose to the end of the hold. */
export const holdTexts = {
  raise: ({ pace, days, aim }) => ({
    doing: `raise: first dose; to ${shownNumber(aim)} mg/L over ${daysText(days)}, doses from QT.RAMP; fish that cannot tolerate copper get none`,
    why: whyPace(pace),
  }),
  'test-raising': ({ pace }) => ({
    doing: `test ${pace === 'urgent' ? `every ${hoursPerDay / limits.testsADayUrgent.value} hours` : times(limits.testsADayRaising.value)} while raising, and before a dose ${limits.mixing.value} h or more after the last one`,
    why: 'common practice: never dose on an untested level, never past the top of the band',
  }),
  'test-decides': ({ level }) => ({
    doing: `test, ${limits.mixing.value} h after the dose: about ${shownNumber(level)} mg/L by now; from here on the reading decides, not the plan; off by more than ${percent(limits.planOff.value)}: stop, volume or strength is wrong`,
    why: `common practice: from ${percent(limits.testDecides.value)} of the aim on`,
  }),
  'hold-begins': ({ low }) => ({
    doing: `hold day 1, if a test reads ${shownNumber(low)} mg/L or more; if not, the hold and all later dates move`,
    why: 'common practice: days count only from a reading inside the band; raising days do not',
  }),
  'test-holding': ({ low, aim }) => ({
    doing: `test every day and keep near ${shownNumber(aim)} mg/L; one reading below ${shownNumber(low)} starts the hold again; new water gets its copper first (QT.CHANGEDOSE)`,
    why: `common practice: over ${limits.notedGap.value} h untested is noted, over ${limits.transferGap.value} h rules out a transfer, over ${limits.longestGap.value} h the hold starts again`,
  }),
  watch: () => ({
    doing: `watch the fish and write down signs (QT.SIGNS): a transfer needs the ${limits.quietDays.value} days before it without any`,
    why: 'common practice',
  }),
  'prepare-observation': () => ({
    doing:
      'prepare an observation tank: new, or washed and dried, with copper-free water of the same salinity and temperature',
    why: 'common practice',
  }),
  transfer: () => ({
    doing:
      'transfer possible, to the dry or new copper-free observation tank; no water, net or equipment goes with the fish; ' +
      `only if no stretch was untested for over ${limits.transferGap.value} h and the last ${limits.quietDays.value} days were without signs; ` +
      `then observe them there for ${limits.observeEarliest.value} to ${limits.observeAdvised.value} days`,
    why: `common practice: ${limits.transferDays.value} days, beyond the 3–7 days on the fish (${named('Colorni1985')}); tomites appear for up to 28 days, so nothing wet may go along`,
  }),
  'prepare-removal': () => ({
    doing: 'have ready: a copper-selective resin or polymer pad, and copper-free salt water for the changes',
    why: 'common practice',
  }),
  finish: ({ days, low }) => ({
    doing: `finish: ${daysText(days)} are done, if QT.HOLDS agrees: no reading below ${shownNumber(low)} mg/L, no stretch untested for over ${limits.longestGap.value} h`,
    why: whyDays(days),
  }),
} satisfies Partial<PlanTexts>;

function times(aDay: number): string {
  return aDay === 2 ? 'twice a day' : `${aDay} times a day`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function daysText(days: number): string {
  return days === 1 ? '24 hours' : `${shownNumber(days)} days`;
}

function whyPace(pace: Pace): string {
  if (pace === 'urgent') {
    return 'common practice: with active white spot or velvet the delay is the greater risk';
  }
  const published = `${named('ZecHadfieldHungerford2021')}, over 3–5 days`;
  if (pace === 'gradual') return `common practice, in small equal parts; ${published}`;
  return pace === 'sensitive'
    ? `common practice: slower for copper-sensitive fish; ${published}`
    : `your own pace; ${published}`;
}

function whyDays(days: number): string {
  const zec = named('ZecHadfieldHungerford2021');
  const [short, published, usual] = [limits.shortCourse.value, limits.publishedCourse.value, limits.holdDays.value];
  const practice = `${usual} days is common practice`;
  if (days < short) return `short: ${zec} counted courses under ${short} days so; ${practice}`;
  if (days < published) return `shorter than the ${published} days of public aquaria (${zec}); ${practice}`;
  if (days < usual) return `public aquaria held ${published} days (${zec}); ${practice}`;
  return `common practice; ${named('HadfieldClayton2011')}: 95 % of 42 institutions quarantine for 30 days or more; 28 days of tomites + 2 (derived from Colorni 1985)`;
}
