const printedNumber = /^[+-]?\d+(?:\.\d+)?$/;

/**
 * Whether a number agrees with a printed one to its last printed place.
 *
 * Definition: they differ by no more than half a unit of that place.
 *
 * @param computed the number; null, which agrees with nothing, where there is none
 * @param printed digits with or without a decimal point
 * @returns true only for a finite number that is near enough
 * @example agreesAsPrinted(1.018054, '1.018') // = true
 */
export function agreesAsPrinted(computed: number | null, printed: string): boolean {
  if (computed === null || !printedNumber.test(printed)) return false;
  const decimals = printed.split('.')[1]?.length ?? 0;
  // The least allowance above half a unit: the printed decimal is itself not exact in binary.
  return Math.abs(computed - Number(printed)) <= 0.5 * 10 ** -decimals * (1 + 1e-9);
}
