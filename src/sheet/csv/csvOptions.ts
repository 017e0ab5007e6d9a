/** What a person says about a csv file, so that it need not be found out. */
export interface CsvOptions {
  /** One character. */
  readonly delimiter?: string;
  readonly decimal?: 'point' | 'comma';
  readonly dates?: 'day first' | 'month first';
}
