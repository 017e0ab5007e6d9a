/** A text beginning like this would be taken for a formula where the table is pasted into a sheet. */
const likeFormula = /^[=+\-@\t\r\n]/;
const plain = /^[-+]?[\d.,\s]*$/;

/** What stands in a cell of the report: a text that a spreadsheet would take for a formula stands in quotation marks. */
export function cellText(text: string | number): string {
  const written = String(text);
  return likeFormula.test(written) && !plain.test(written) ? `“${written}”` : written;
}
