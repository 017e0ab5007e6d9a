/** Row 0, column 6 as `"G1"`. */
export function addressOf(row: number, column: number): string {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row + 1}`;
}
