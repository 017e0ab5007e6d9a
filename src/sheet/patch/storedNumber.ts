const daysTo1904 = 1462;

/** A day as a workbook that counts from 1904 stores it; times of day and spans below a day are the same in both. */
export function storedNumber(serial: number, isDay: boolean, date1904: boolean): number {
  return date1904 && isDay && serial >= daysTo1904 + 1 ? serial - daysTo1904 : serial;
}
