import { signReading } from './signs/signReading.js';
import { signTokens } from './signs/signTokens.js';

const foodRefused = /food|feed|\beat|\bate\b|appetite|refus|reject|ignor|spit|spat|anorexi|interest/;
const tellsOfFish = ['bad', 'badNoun', 'place', 'breathing', 'breathBad', 'slow', 'swimming', 'lively'];

/**
 * Whether a text says no more of a sick fish than that it does not eat, as on the day of its arrival any fish may.
 *
 * @param text what was written about the fish
 * @returns false where it has another sign, or none
 * @example onlyNotEating('not eating') // = true
 */
export function onlyNotEating(text: string): boolean {
  const parts = text.split(/[,;.\n]|\bbut\b|\band\b/i).filter((part) => signReading(part).kind === 'sign');
  return parts.length > 0 && parts.every(isOfFood);
}

function isOfFood(part: string): boolean {
  const tokens = signTokens(part).filter(({ kind }) => kind === 'feeds' || tellsOfFish.includes(kind));
  return tokens.length > 0 && tokens.every(({ kind, text }) => kind === 'feeds' || foodRefused.test(text));
}
