export interface CsvRecords {
  readonly records: readonly (readonly string[])[];
  /** The record, counted from 0, with a quoted field that never ends; null: there is none. */
  readonly unclosed: number | null;
  /** Records that run over several lines. */
  readonly overLines: number;
}

interface CsvForm {
  readonly delimiter: string;
  /** Where the first record begins. */
  readonly from?: number;
  /** The most records to read. */
  readonly most?: number;
}

/**
 * The records of a csv text as fields: quotes as in RFC 4180, lines ended by CR, LF or both. A quote within a field that
 * began without one is an ordinary character, and so is what follows a closing quote.
 */
export function csvRecords(text: string, { delimiter, from = 0, most = Infinity }: CsvForm): CsvRecords {
  const fields = new Fields(text, delimiter.charCodeAt(0), from);
  const records: string[][] = [];
  let overLines = 0;
  while (fields.at < text.length && records.length < most) {
    const record: string[] = [];
    let hasBreak = false;
    for (;;) {
      const field = fields.next();
      if (field === null) return { records, unclosed: records.length, overLines };
      if (fields.wasQuoted && /[\r\n]/.test(field)) hasBreak = true;
      record.push(field);
      if (!fields.passesDelimiter()) break;
    }
    fields.passLineEnd();
    records.push(record);
    if (hasBreak) overLines++;
  }
  return { records, unclosed: null, overLines };
}

const quote = 34;
const space = 32;
const lineFeed = 10;
const carriageReturn = 13;

class Fields {
  wasQuoted = false;

  constructor(
    private readonly text: string,
    private readonly delimiter: number,
    public at: number,
  ) {}

  /** The next field; null where its closing quote is missing. */
  next(): string | null {
    let start = this.at;
    while (this.text.charCodeAt(start) === space) start++;
    this.wasQuoted = this.text.charCodeAt(start) === quote;
    return this.wasQuoted ? this.quoted(start + 1) : this.plain(this.at);
  }

  passesDelimiter(): boolean {
    if (this.text.charCodeAt(this.at) !== this.delimiter) return false;
    this.at++;
    return true;
  }

  passLineEnd(): void {
    const isReturn = this.text.charCodeAt(this.at) === carriageReturn;
    this.at += isReturn && this.text.charCodeAt(this.at + 1) === lineFeed ? 2 : 1;
  }

  private plain(start: number): string {
    const { text, delimiter } = this;
    let end = start;
    for (; end < text.length; end++) {
      const code = text.charCodeAt(end);
      if (code === delimiter || code === lineFeed || code === carriageReturn) break;
    }
    this.at = end;
    return text.slice(start, end);
  }

  private quoted(start: number): string | null {
    let content = '';
    for (let from = start; ;) {
      const end = this.text.indexOf('"', from);
      if (end === -1) return null;
      content += this.text.slice(from, end);
      if (this.text.charCodeAt(end + 1) !== quote) return content + this.plain(end + 1).trimEnd();
      content += '"';
      from = end + 2;
    }
  }
}
