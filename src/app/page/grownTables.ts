import { addressRange, type BookTable, partOf, zipEntries, zipWith } from '../../sheet/index.js';

/** An .xlsx whose named tables reach as far as these. */
export function grownTables(bytes: Uint8Array, before: readonly BookTable[], now: readonly BookTable[]): Uint8Array {
  const moved = now.filter((table, i) => addressRange(table.range) !== addressRange(before[i]?.range ?? table.range));
  if (moved.length === 0) return bytes;
  const parts = new Map<string, Uint8Array>();
  for (const entry of zipEntries(bytes)) {
    if (!/^xl\/tables\/[^/]+\.xml$/.test(entry.name)) continue;
    const text = new TextDecoder().decode(partOf(bytes, entry));
    const table = moved.find(({ name }) => /<table\b[^>]*>/.exec(text)?.[0].includes(` displayName="${name}"`));
    if (table !== undefined)
      parts.set(entry.name, new TextEncoder().encode(withRange(text, addressRange(table.range))));
  }
  return parts.size === 0 ? bytes : zipWith(bytes, parts);
}

function withRange(text: string, range: string): string {
  return text.replace(/(<(?:table|autoFilter)\b[^>]*?\sref=")[^"]*(")/g, `$1${range}$2`);
}
