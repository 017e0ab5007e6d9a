/** A level to a thousandth, without trailing zeros and without its unit. */
export function levelText(level: number): string {
  return String(Number(level.toFixed(3)));
}
