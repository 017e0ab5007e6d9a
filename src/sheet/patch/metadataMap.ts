import { closeElement } from './closeElement.js';
import { elementAt } from './elementAt.js';
import { localName } from './localName.js';
import type { ElementAt } from './sheetMap.js';
import { walkXml, type StartTag } from './walkXml.js';

/** A list in the metadata part: where it stands, or where it would. */
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

interface Entry {
  readonly list: ElementAt;
  readonly tag: StartTag;
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
    const later = lists.find((list) => order.indexOf(localName(list.name)) > order.indexOf(name));
    return later?.from ?? root.contentTo;
  };
  const list = (name: string, at: ElementAt | undefined): MetadataList => {
    return { name, place: place(name), count: of(at).length, ...(at && { at }) };
  };
  const named = (name: string): ElementAt | undefined => lists.find((at) => localName(at.name) === name);
  const future = lists.find((at) => localName(at.name) === 'futureMetadata' && at.attributes['name'] === 'XLDAPR');
  const [kinds, cells] = [named('metadataTypes'), named('cellMetadata')];
  const kindIndex = of(kinds).findIndex(({ tag }) => tag.attributes['name'] === 'XLDAPR');
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

function read(xml: string, part: string): { root: ElementAt; lists: ElementAt[]; entries: Entry[] } {
  const open: ElementAt[] = [];
  const lists: ElementAt[] = [];
  const entries: Entry[] = [];
  let root: ElementAt | undefined;
  walkXml(xml, part, {
    open: (tag, depth) => {
      const { name, attributes } = tag;
      const at = elementAt(tag);
      const list = open[1];
      const entry = entries[entries.length - 1];
      if (depth === 0) root = at;
      else if (depth === 1) lists.push(at);
      else if (depth === 2 && list) entries.push({ list, tag, dynamic: false, records: [] });
      else if (localName(name) === 'rc') entry?.records.push([attributes['t'] ?? '', attributes['v'] ?? '']);
      else if (localName(name) === 'dynamicArrayProperties' && entry) {
        entry.dynamic = isTrue(attributes['fDynamic']) && !isTrue(attributes['fCollapsed']);
      }
      open.push(at);
    },
    close: (tag) => {
      const at = open.pop();
      if (at) closeElement(at, tag);
    },
  });
  if (!root) throw new Error(`${part} has no root`);
  return { root, lists, entries };
}

function isTrue(text: string | undefined): boolean {
  return text === '1' || text === 'true';
}
