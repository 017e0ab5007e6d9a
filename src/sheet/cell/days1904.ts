/** A workbook may count its days from 1904; a day has this many more when counted from 1900. */
const daysTo1904 = 1462;

/** A day as a file that counts from 1904 stores it, counted from 1900. Below one it is a time of day and stays. */
export function dayFrom1904(stored: number): number {
  return stored >= 1 ? stored + daysTo1904 : stored;
}

/** A day counted from 1900 as a file that counts from 1904 stores it. Times of day and days before 1904 stay. */
export function dayIn1904(serial: number): number {
  return serial >= daysTo1904 + 1 ? serial - daysTo1904 : serial;
}
