export type TablePart = '#All' | '#Data' | '#Headers' | '#Totals' | '#This Row';

/** Part of a table as written, such as `Log[[#Headers],[#Data],[When]:[Level]]`. */
export interface StructuredReference {
  /** '' where it is left out: the table that the formula stands in. */
  readonly table: string;
  /** None: the data. */
  readonly parts: readonly TablePart[];
  /** First and last column; none: all. */
  readonly columns: readonly string[];
}

const tableParts: readonly TablePart[] = ['#All', '#Data', '#Headers', '#Totals', '#This Row'];

/** The text of a `table` token read; undefined where it is malformed. */
export function structuredReference(text: string): StructuredReference | undefined {
  const bracket = text.indexOf('[');
  const [table, inner] = [text.slice(0, bracket), text.slice(bracket + 1, -1).trim()];
  if (inner.startsWith('@')) return thisRow(table, inner.slice(1).trim());
  if (!inner.startsWith('[')) {
    if (inner === '') return { table, parts: [], columns: [] };
    const part = partNamed(inner);
    if (inner.startsWith('#') && part === undefined) return undefined;
    return part === undefined
      ? { table, parts: [], columns: [unescaped(inner)] }
      : { table, parts: [part], columns: [] };
  }
  const items = itemsIn(inner);
  if (items === undefined) return undefined;
  const isPart = (item: string): boolean => item.startsWith('#');
  const parts = items.filter(isPart).map(partNamed);
  if (parts.some((part) => part === undefined)) return undefined;
  const columns = items.filter((item) => !isPart(item)).map(unescaped);
  return columns.length > 2 ? undefined : { table, parts: parts.filter((part) => part !== undefined), columns };
}

function thisRow(table: string, columns: string): StructuredReference | undefined {
  const items = columns.startsWith('[') ? itemsIn(columns) : columns === '' ? [] : [columns];
  if (items === undefined || items.length > 2) return undefined;
  return { table, parts: ['#This Row'], columns: items.map(unescaped) };
}

/** What stands in the brackets of `[#Headers],[When]:[Level]`; a comma or a colon separates two of them. */
function itemsIn(text: string): string[] | undefined {
  const item = /\s*\[((?:[^[\]']|'[^])*)\]\s*([,:]|$)/y;
  const items: string[] = [];
  while (item.lastIndex < text.length) {
    const found = item.exec(text);
    if (found?.[1] === undefined) return undefined;
    items.push(found[1].trim());
  }
  return items;
}

function partNamed(text: string): TablePart | undefined {
  const words = text.replace(/\s+/g, ' ').toLowerCase();
  return tableParts.find((part) => part.toLowerCase() === words);
}

/** `'` stands before a bracket, a `#`, an `@` or a `'` that belongs to the column's name. */
function unescaped(column: string): string {
  return column.replace(/'([^])/g, '$1');
}

/** A part of a table written out: `Log[@Level]` as people type it, `Log[[#This Row],[Level]]` as files hold it. */
export function structuredText({ table, parts, columns }: StructuredReference, form: 'typed' | 'stored'): string {
  const names = columns.map((column) => `[${escaped(column)}]`).join(':');
  if (form === 'typed' && parts.join() === '#This Row') {
    const [only = '', second] = columns;
    const isBare = second === undefined && /^[\p{L}\p{N}_]*$/u.test(only);
    return `${table}[@${isBare ? only : names}]`;
  }
  if (parts.length === 0) return columns.length === 1 ? `${table}${names}` : `${table}[${names}]`;
  if (parts.length === 1 && columns.length === 0) return `${table}[${parts.join()}]`;
  return `${table}[${[...parts.map((part) => `[${part}]`), ...(names === '' ? [] : [names])].join(',')}]`;
}

function escaped(column: string): string {
  return column.replace(/['[\]#@]/g, "'$&");
}
