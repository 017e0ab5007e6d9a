import { fishCount } from '../fish/fishCount.js';
import { rememberedReading } from './signs/rememberedReading.js';
import type { SaidText } from './saidTexts.js';

/** Whether a text says a fact, how the fish are, or which fish come, go or die. */
export function isUnderstood({ facts, column, text }: SaidText): boolean {
  if (facts.length > 0) return true;
  if (column === 'signs' || column === 'note') return rememberedReading(text).kind !== 'unread';
  const { groups, exact } = fishCount(text, column);
  return groups.length === 0 || exact;
}
