import { addressRange, type BookTable, partOf, zipEntries, zipWith } from '../../sheet/index.js';
import type { Places } from './shownFile.js';

/** An .xlsx whose named tables and ranges stand where these are. */
export function placesInCopy(bytes: Uint8Array, before: Places, now: Places): Uint8Array {
  const tables = now.tables.filter((table, at) => isMovedWhole(before.tables[at], table));
  const names = before.names.flatMap(({ name, formula }, at) => {
    const moved = now.names[at]?.formula ?? formula;
    return moved === formula ? [] : [{ name, formula, moved }];
  });
  if (tables.length === 0 && names.length === 0) return bytes;
  const parts = new Map<string, Uint8Array>();
  for (const entry of zipEntries(bytes)) {
    const isTable = /^xl\/tables\/[^/]+\.xml$/.test(entry.name);
    if (!isTable && entry.name !== 'xl/workbook.xml') continue;
    const text = new TextDecoder().decode(partOf(bytes, entry));
    const written = isTable ? withRange(text, tables) : names.reduce(withName, text);
    if (written !== text) parts.set(entry.name, new TextEncoder().encode(written));
  }
  return parts.size === 0 ? bytes : zipWith(bytes, parts);
}

/** A table with more or fewer columns than its file lists would make a damaged file; it stays as it was. */
function isMovedWhole(before: BookTable | undefined, { range }: BookTable): boolean {
  if (before === undefined || addressRange(before.range) === addressRange(range)) return false;
  return before.range.lastColumn - before.range.firstColumn === range.lastColumn - range.firstColumn;
}

function withRange(text: string, tables: readonly BookTable[]): string {
  const head = /<table\b[^>]*>/.exec(text)?.[0] ?? '';
  const table = tables.find(({ name }) => head.includes(` displayName="${name}"`));
  if (table === undefined) return text;
  const { range, totals } = table;
  const filtered = totals ? { ...range, lastRow: range.lastRow - 1 } : range;
  return text
    .replace(/(<table\b[^>]*?\sref=")[^"]*(")/, `$1${addressRange(range)}$2`)
    .replace(/(<autoFilter\b[^>]*?\sref=")[^"]*(")/, `$1${addressRange(filtered)}$2`);
}

interface MovedName {
  readonly name: string;
  readonly formula: string;
  readonly moved: string;
}

function withName(text: string, { name, formula, moved }: MovedName): string {
  return text.replace(/(<definedName\b[^>]*>)([^<]*)(?=<\/definedName>)/g, (all, tag: string, held: string) => {
    const own = /\sname="([^"]*)"/.exec(tag)?.[1] ?? '';
    return unescaped(own) === name && unescaped(held).trim() === formula ? `${tag}${escaped(moved)}` : all;
  });
}

function unescaped(text: string): string {
  return text
    .replace(/&apos;/g, "'")
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&');
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}
