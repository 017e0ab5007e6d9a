import { signReading } from './signReading.js';

/** Words without which no note is looked at: most notes are about the tank. */
const maybe = /breath|gasp|gill|\beat|ate\b|feed|food|appetite/i;

/**
 * Whether a note among others says that fish breathe badly or do not eat. Only these: "flashing", "spots", "weak" in a note
 * may as well be a meter, a glass, a pump.
 */
export function isNotedSign(note: string): boolean {
  if (!maybe.test(note)) return false;
  const { kind, ails } = signReading(note);
  return kind === 'sign' && ails.some((topic) => topic === 'breathing' || topic === 'feeding');
}
