import type { Pace } from '../../dose/pacePlan.js';
import { shownNumber } from '../../units/shown.js';
import { named } from './named.js';
import type { PlanTexts } from './planTexts.js';

/** From the first dose to the end of the hold. */
export const holdTexts = {
  raise: ({ pace, days, aim }) => ({
    doing: `raise: first dose; to ${shownNumber(aim)} mg/L over ${daysText(days)}, doses from QT.RAMP; fish that cannot bear copper get none`,
    why: whyPace(pace),
  }),
  'test-raising': ({ pace }) => ({
    doing: `test ${pace === 'urgent' ? 'every 6 hours' : 'twice a day'} while raising, and before a dose 2 h or more after the last one`,
    why: 'common practice: never dose on an untested level, never past the top of the band',
  }),
  'test-decides': ({ level }) => ({
    doing: `test, 2 h after the dose: about ${shownNumber(level)} mg/L by now; from here on the reading decides, not the plan; off by more than 15 %: stop, volume or strength is wrong`,
    why: 'common practice: from 80 % of the aim on',
  }),
  'hold-begins': ({ low }) => ({
    doing: `hold day 1, if a test reads ${shownNumber(low)} mg/L or more; if not, the hold and all dates after it move`,
    why: 'common practice: days count only from a reading inside the band; raising days do not',
  }),
  'test-holding': ({ low, aim }) => ({
    doing: `test every day and keep near ${shownNumber(aim)} mg/L; one reading below ${shownNumber(low)} starts the hold anew; new water gets its copper first (QT.CHANGEDOSE)`,
    why: 'common practice: over 36 h untested is noted, over 48 h rules out a transfer, over 96 h the hold starts anew',
  }),
  watch: () => ({
    doing: 'watch the fish and write down signs (QT.SIGNS): a transfer needs the 7 days before it without any',
    why: 'common practice',
  }),
  'prepare-observation': () => ({
    doing:
      'make ready an observation tank: new, or washed and dried, with copper-free water of the same salinity and temperature',
    why: 'common practice',
  }),
  transfer: () => ({
    doing:
      'transfer possible, to the dry or new copper-free observation tank; no water, net or equipment goes with the fish; only if no stretch was untested for over 48 h and the last 7 days were without signs; then observe them there for 14 to 28 days',
    why: `common practice: 14 days, beyond the 3–7 days on the fish (${named('Colorni1985')}); tomites appear for up to 28 days, so nothing wet may go along`,
  }),
  'prepare-removal': () => ({
    doing: 'have at hand: a copper-selective resin or polymer pad, and copper-free salt water for the changes',
    why: 'common practice',
  }),
  finish: ({ days, low }) => ({
    doing: `finish: ${daysText(days)} are done, if QT.HOLDS agrees: no reading below ${shownNumber(low)} mg/L, no stretch untested for over 96 h`,
    why: whyDays(days),
  }),
} satisfies Partial<PlanTexts>;

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
  if (days < 14) return `short: ${zec} counted courses under 14 days so; 30 days is common practice`;
  if (days < 21) return `shorter than the 21 days of public aquaria (${zec}); 30 days is common practice`;
  if (days < 30) return `public aquaria held 21 days (${zec}); 30 days is common practice`;
  return `common practice; ${named('HadfieldClayton2011')}: 95 % of 42 institutions quarantine for 30 days or more; 28 days of tomites + 2 (derived from Colorni 1985)`;
}
