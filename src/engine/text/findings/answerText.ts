import type { HoldAnswer } from '../../rules/holdAnswer.js';
import { daysText } from './daysText.js';

/** The answer to whether the hold was long enough, in a few words. */
export function answerText({ kind, days }: HoldAnswer): string {
  return kind === 'not complete' ? 'not complete, no hold running' : `${kind}, ${daysText(days)}`;
}
