/** A number to one decimal, half up; a tie that binary noise blurs is still one. */
export function oneDecimal(x: number): string {
  return (Math.round(x * 10 + 1e-6) / 10).toFixed(1);
}
