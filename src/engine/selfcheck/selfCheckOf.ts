import { agreesAsPrinted } from './agreesAsPrinted.js';
import type { PublishedValue } from './publishedValue.js';

interface SelfCheck {
  readonly value: PublishedValue;
  readonly computed: number | null;
  readonly agrees: boolean;
}

/**
 * A published value recomputed now.
 *
 * Definition: the engine's own answer beside the printed one, and whether they agree as printed, or within the share said.
 *
 * @param value published number and how it is computed
 * @returns the answer and the verdict
 */
export function selfCheckOf(value: PublishedValue): SelfCheck {
  const computed = value.computed();
  return { value, computed, agrees: agrees(value, computed) };
}

function agrees({ printed, within }: PublishedValue, computed: number | null): boolean {
  if (within === undefined) return agreesAsPrinted(computed, printed);
  return computed !== null && Math.abs(computed / Number(printed) - 1) <= within;
}
