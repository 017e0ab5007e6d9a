/** A year as written: of two digits, those below 70 are of this century. */
export function fullYear(digits: string | undefined): number {
  const year = Number(digits);
  if (digits?.length !== 2) return year;
  return year < 70 ? 2000 + year : 1900 + year;
}
