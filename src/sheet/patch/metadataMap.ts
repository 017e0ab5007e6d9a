import { spreadsheetPrefixes } from '../xlsx/spreadsheetPrefixes.js';
import { eachElement, type ElementAt } from '../xml/elementAt.js';

/** A list in the metadata part: where it is, or where it would go. */
interface MetadataList {
  readonly name: string;
  readonly at?: ElementAt;
  readonly place: number;
  readonly count: number;
}

export interface MetadataMap {
  readonly root: ElementAt;
  readonly kinds: MetadataList;
  readonly future: MetadataList;
  readonly cells: MetadataList;
  /** From 0: the kind of dynamic arrays, its property, the entry of cells that has both. */
  readonly kindIndex?: number;
  readonly propertyIndex?: number;
  readonly dynamicCell?: number;
}

interface List {
  readonly name: string;
  readonly at: ElementAt;
}

interface Entry {
  readonly list: ElementAt | undefined;
  readonly at: ElementAt;
  dynamic: boolean;
  readonly records: (readonly [kind: string, value: string])[];
}

const order = [
  'metadataTypes',
  'metadataStrings',
  'mdxMetadata',
  'futureMetadata',
  'cellMetadata',
  'valueMetadata',
  'extLst',
];

/** What the metadata part says of dynamic arrays. */
export function metadataMap(xml: string, part: string): MetadataMap {
  const { root, lists, entries } = read(xml, part);
  const of = (list: ElementAt | undefined): Entry[] => entries.filter((entry) => entry.list === list);
  const place = (name: string): number => {
    const later = lists.find((list) => order.indexOf(list.name) > order.indexOf(name));
    return later?.at.from ?? root.contentTo;
  };
  const list = (name: string, at: ElementAt | undefined): MetadataList => {
    return { name, place: place(name), count: of(at).length, ...(at && { at }) };
  };
  const named = (name: string): ElementAt | undefined => lists.find((one) => one.name === name)?.at;
  const future = lists.find(({ name, at }) => name === 'futureMetadata' && at.attributes['name'] === 'XLDAPR')?.at;
  const [kinds, cells] = [named('metadataTypes'), named('cellMetadata')];
  const kindIndex = of(kinds).findIndex(({ at }) => at.attributes['name'] === 'XLDAPR');
  const propertyIndex = of(future).findIndex(({ dynamic }) => dynamic);
  const dynamicCell = of(cells).findIndex(
    ({ records: [record, other] }) =>
      record !== undefined &&
      other === undefined &&
      record[0] === String(kindIndex + 1) &&
      record[1] === String(propertyIndex),
  );
  return {
    root,
    kinds: list('metadataTypes', kinds),
    future: list('futureMetadata', future),
    cells: list('cellMetadata', cells),
    ...(kindIndex >= 0 && { kindIndex }),
    ...(propertyIndex >= 0 && { propertyIndex }),
    ...(kindIndex >= 0 && propertyIndex >= 0 && dynamicCell >= 0 && { dynamicCell }),
  };
}

function read(text: string, part: string): { root: ElementAt; lists: List[]; entries: Entry[] } {
  const lists: List[] = [];
  const entries: Entry[] = [];
  let root: ElementAt | undefined;
  eachElement({ text, part, prefixes: spreadsheetPrefixes }, (name, at, { length: depth }) => {
    const { t = '', v = '', fDynamic, fCollapsed } = at.attributes;
    const entry = entries[entries.length - 1];
    if (depth === 0) root = at;
    else if (depth === 1) lists.push({ name, at });
    else if (depth === 2) entries.push({ list: lists[lists.length - 1]?.at, at, dynamic: false, records: [] });
    else if (name === 'rc') entry?.records.push([t, v]);
    else if (name === 'xda:dynamicArrayProperties' && entry) entry.dynamic = isTrue(fDynamic) && !isTrue(fCollapsed);
  });
  if (!root) throw new Error(`${part} has no root`);
  return { root, lists, entries };
}

function isTrue(text: string | undefined): boolean {
  return text === '1' || text === 'true';
}
