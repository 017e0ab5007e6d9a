import type { GateReason } from '../audit/gates/gate.js';
import * as limits from '../limits/limits.js';
import { hoursPerDay } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';
import { isoFromSerial } from '../../base/isoFromSerial.js';

/** Why a gate is met or not, in words. */
export function gateText(why: GateReason): string {
  switch (why.code) {
    case 'days':
    case 'fish-short':
    case 'no-hold':
    case 'longest-stretch':
    case 'open-rows':
    case 'every-row-read':
      return holdText(why);
    case 'sign':
    case 'second-time':
    case 'unread-sign':
    case 'no-recovery':
    case 'nothing-written':
    case 'none-noted':
    case 'died':
      return fishText(why);
    case 'praziquantel':
    case 'no-praziquantel':
      return flukesText(why);
    case 'copper-in':
    case 'not-tested-out':
    case 'test-due':
    case 'copper-out':
    case 'observed':
    case 'not-begun':
      return afterText(why);
  }
}

type Of<C extends GateReason['code']> = Extract<GateReason, { readonly code: C }>;

function holdText(
  why: Of<'days' | 'fish-short' | 'no-hold' | 'longest-stretch' | 'open-rows' | 'every-row-read'>,
): string {
  switch (why.code) {
    case 'days': {
      const date =
        why.readyOn === null
          ? 'no hold is running'
          : `${why.isTested ? '' : 'would be '}reached on ${isoFromSerial(why.readyOn)}`;
      const open = why.readyOn === null || why.isTested ? '' : ', if a test then or later is still in the band';
      return `${rounded(why.held, 2)} of ${rounded(why.wanted, 2)} days held; ${date}${open}`;
    }
    case 'fish-short':
      return (
        `the tank has its days, but not ${listedFew(why.fish)}, which came in later: ` +
        (why.readyOn === null ? 'no hold is running for them' : `ready on ${isoFromSerial(why.readyOn)} if it holds`)
      );
    case 'no-hold':
      return 'no hold has begun: no reading counts as in the band';
    case 'longest-stretch':
      return (
        `${why.isSince ? 'the last test is' : 'the longest stretch between tests is'} ${rounded(why.hours, 1)} h` +
        `${why.isSince ? ' old' : ''}, ${why.limit === Infinity ? 'no limit is set' : `the limit is ${rounded(why.limit, 1)} h`}`
      );
    case 'open-rows':
      return `cannot be read: ${why.rows.length === 1 ? 'row' : 'rows'} ${listedFew(why.rows.map(String))}; see QT.AUDIT`;
    case 'every-row-read':
      return 'every row that matters can be read';
  }
}

function fishText(
  why: Of<'sign' | 'second-time' | 'unread-sign' | 'no-recovery' | 'nothing-written' | 'none-noted' | 'died'>,
): string {
  switch (why.code) {
    case 'sign':
      return `"${cut(why.text)}" on ${isoFromSerial(why.when)} (row ${why.row})`;
    case 'second-time':
      return `signs a second time, "${cut(why.text)}" on ${isoFromSerial(why.when)} (row ${why.row}): stop copper`;
    case 'unread-sign':
      return `"${cut(why.text)}" (row ${why.row}) cannot be read; write "eating well" or what is wrong`;
    case 'no-recovery':
      return `the last word is "${cut(why.text)}" (row ${why.row}); write whether the fish eats and acts normally`;
    case 'nothing-written':
      return why.about === 'signs'
        ? `nothing is written about the fish; keep a column of signs for the last ${why.days} days`
        : `the log has no column of deaths, or no row of the last ${why.days} days; write 0 where none died`;
    case 'none-noted':
      return `no ${why.about} noted in the last ${why.days} days`;
    case 'died':
      return `${why.count} died in the last ${why.days} days, the last on ${isoFromSerial(why.when)} (row ${why.row})`;
  }
}

function flukesText(why: Of<'praziquantel' | 'no-praziquantel'>): string {
  if (why.code === 'no-praziquantel') return 'no praziquantel is noted; copper days never count for flukes';
  const first = `praziquantel on ${isoFromSerial(why.first)}`;
  if (why.second !== null) return `${first} and ${isoFromSerial(why.second)}`;
  const from = isoFromSerial(why.first + why.from);
  const until = isoFromSerial(why.first + why.until);
  return `${first}; no second bath is noted, which belongs between ${from} and ${until}, as eggs outlive the first`;
}

function afterText(
  why: Of<'copper-in' | 'not-tested-out' | 'test-due' | 'copper-out' | 'observed' | 'not-begun'>,
): string {
  switch (why.code) {
    case 'copper-in':
      return (
        `the last reading is ${rounded(why.level, 3)} mg/L on ${isoFromSerial(why.when)} (row ${why.row}); ` +
        `${rounded(why.limit, 3)} or less shows the copper gone`
      );
    case 'not-tested-out':
      return 'the hold is not over: no test after it shows the copper gone';
    case 'test-due':
      return `test again ${testOut(why.after)} after the last change, from ${isoFromSerial(why.due)} on: copper comes back off silicone and sand`;
    case 'copper-out':
      return `tests ${testOut('first')} and ${testOut('second')} after the change of ${isoFromSerial(why.change)} show no copper; never for invertebrates`;
    case 'observed':
      return (
        `from ${isoFromSerial(why.ended)}: ${isoFromSerial(why.earliest)} at the earliest` +
        `${why.advised > why.earliest ? `, better ${isoFromSerial(why.advised)}` : ''}`
      );
    case 'not-begun':
      return 'begins when the copper is out';
  }
}

/** How long after the last change each of the two tests comes. */
function testOut(test: 'first' | 'second'): string {
  return test === 'first' ? `${limits.firstTestOut.value} h` : `${limits.secondTestOut.value / hoursPerDay} days`;
}

const longest = 60;
const mostListed = 6;

function cut(text: string): string {
  const letters = Array.from(text.replace(/\s+/g, ' ').trim());
  return letters.length <= longest ? letters.join('') : `${letters.slice(0, longest - 1).join('')}…`;
}

function listedFew(names: readonly string[]): string {
  const more = names.length - mostListed;
  return more > 0 ? `${names.slice(0, mostListed).map(cut).join(', ')} and ${more} more` : names.map(cut).join(', ');
}

function rounded(x: number, places: number): string {
  return shownNumber(Number(x.toFixed(places)));
}
