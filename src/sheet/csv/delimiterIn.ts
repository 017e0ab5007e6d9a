import { FileProblem } from '../zip/fileProblem.js';
import { csvRecords } from './csvRecords.js';
import { isPlainField, isWordsRecord } from './plainFields.js';

const candidates = [',', ';', '\t', '|'];
const sampled = 500;
/** How many rows are examined field by field. */
const lookedInto = 100;
/** Two candidates whose fits differ by less fit equally well. */
const leastLead = 0.05;

/** The character between the fields: it gives rows of equal length, with words above numbers and dates. */
export function delimiterIn(text: string, from: number): string {
  const fits = candidates
    .map((delimiter) => ({ delimiter, records: recordsBy(text, delimiter, from) }))
    .map(({ delimiter, records }) => ({ delimiter, records, alike: alikeShare(records) }))
    .filter(({ alike }) => alike > 0);
  const most = Math.max(...fits.map(({ alike }) => alike));
  const close = fits.filter(({ alike }) => alike > most / 4);
  const [only] = close;
  if (only === undefined) return ',';
  if (close.length === 1) return only.delimiter;
  const scored = close
    .map(({ delimiter, records, alike }) => ({ delimiter, fit: alike + headed(records) + plainShare(records) }))
    .sort((one, other) => other.fit - one.fit);
  const [best, second] = scored;
  if (best !== undefined && second !== undefined && best.fit - second.fit < leastLead) {
    const [one, other] = [delimiterName(best.delimiter), delimiterName(second.delimiter)];
    throw new FileProblem(
      `The fields may be separated by ${one} or by ${other}, both cut the rows alike; write sep=${best.delimiter} or ` +
        `sep=${second.delimiter} into a line above the first, or say which it is`,
    );
  }
  return best?.delimiter ?? ',';
}

type Records = readonly (readonly string[])[];

/** Leaves out blank records. A quoted field that never ends is evidence against the delimiter. */
function recordsBy(text: string, delimiter: string, from: number): Records {
  const { records, unclosed } = csvRecords(text, { delimiter, from, most: sampled });
  return unclosed === null ? records.filter((record) => record.some((field) => field.trim() !== '')) : [];
}

/** The share of records that have as many fields, two or more, as the one before or after. */
function alikeShare(records: Records): number {
  if (records.length === 1) return (records[0]?.length ?? 0) > 1 ? 1 : 0;
  const alike = records.filter(
    ({ length }, at) => length > 1 && (records[at - 1]?.length === length || records[at + 1]?.length === length),
  );
  return records.length === 0 ? 0 : alike.length / records.length;
}

/** 1 where a record of words alone stands above one with as many fields. */
function headed(records: Records): number {
  const isHeading = (record: readonly string[], at: number): boolean =>
    record.length > 1 && records[at + 1]?.length === record.length && isWordsRecord(record);
  return records.slice(0, lookedInto).some(isHeading) ? 1 : 0;
}

function plainShare(records: Records): number {
  const fields = records
    .slice(0, lookedInto)
    .flat()
    .filter((field) => field.trim() !== '');
  return fields.filter(isPlainField).length / fields.length;
}

const names: Readonly<Record<string, string>> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'upright bars' };

/** What separates the fields, in words. */
export function delimiterName(delimiter: string): string {
  return names[delimiter] ?? `"${delimiter}"`;
}
