/** What is asked of the logs of a book. */
export interface AuditTerms {
  /** Only the logs of this sheet. */
  readonly sheet?: string;
  /** Where the card stands: `Card!A1:B12`, `A1:B12` on the log's sheet, a defined name, a table's name. */
  readonly card?: string;
  /** Later rows are left out. [serial day] */
  readonly asOf?: number;
  /** Only this system. */
  readonly system?: string;
}
