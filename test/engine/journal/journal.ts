import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Answer, ArgumentIn, CellIn } from '../../host/standInHost.js';

/** A whole log with what the keeper asked of it. */
export interface Journal {
  /** What the case shows. */
  readonly shows: string;
  readonly settings: Readonly<Record<string, string>>;
  readonly when: CellIn[][];
  readonly copper: CellIn[][];
}

/** Serial 25569 is 1970-01-01. */
const epochSerial = 25569;

/** A cell as a sheet keeps what is typed into it: a number, a date, text, or text for certain behind an apostrophe. */
export function typed(text: string): CellIn {
  if (text === '') return null;
  if (text.startsWith("'")) return text.slice(1);
  if (/^\d+(\.\d+)?$/.test(text)) return Number(text);
  if (!/^\d{4}-\d\d-\d\d \d\d:\d\d(:\d\d)?$/.test(text)) return text;
  return Date.parse(`${text.replace(' ', 'T')}Z`) / 86_400_000 + epochSerial;
}

/** First line: what it shows; lines `name: value` up to a blank line; then a heading row and a row for each line. */
export function journalIn(folder: string): Journal {
  const [top = '', log = ''] = readFileSync(resolve('test/engine/journal', folder, 'log.txt'), 'utf8').split('\n\n');
  const [shows = '', ...settings] = top.split('\n');
  const rows = log
    .trimEnd()
    .split('\n')
    .map((line) => [line.slice(0, line.indexOf(',')), line.slice(line.indexOf(',') + 1)]);
  return {
    shows,
    settings: Object.fromEntries(settings.map((line) => line.split(': '))),
    when: rows.map(([when = '']) => [typed(when)]),
    copper: rows.map(([, copper = '']) => [typed(copper)]),
  };
}

/** The band of a journal: a form, or two cells. */
export function bandIn({ settings }: Journal): ArgumentIn {
  const band = settings['band'] ?? '';
  return /^\d/.test(band) ? [band.split(' ').map(Number)] : band;
}

const times = ['When', 'From', 'To'];

/**
 * A table as text, a row a line, times as people read them, numbers without the noise of binary fractions. Of a table on
 * file the columns that its headings name, in their order: a column that comes later breaks no answer.
 */
export function tableText(table: Answer, onFile?: string): string {
  if (!Array.isArray(table)) return JSON.stringify(table);
  const wanted = onFile?.split('\n')[0]?.split(' | ') ?? table[0]?.map(String) ?? [];
  const places = wanted.map((title) => table[0]?.indexOf(title) ?? -1);
  const answer = table.map((row) => places.map((place) => row[place]));
  const [heading = []] = answer;
  const isTime = heading.map((title) => times.includes(String(title)));
  return answer
    .map((row) =>
      row
        .map((cell, i) => (isTime[i] === true ? timeText(cell) : cellText(cell)))
        .join(' | ')
        .trimEnd(),
    )
    .join('\n');
}

function cellText(cell: unknown): string {
  return String(typeof cell === 'number' ? Number(cell.toFixed(6)) : cell);
}

function timeText(cell: unknown): string {
  if (typeof cell !== 'number') return String(cell);
  const seconds = new Date(Math.round((cell - epochSerial) * 86_400) * 1000).toISOString();
  return seconds.replace('T', ' ').replace(/(:00)?\.000Z$/, '');
}
