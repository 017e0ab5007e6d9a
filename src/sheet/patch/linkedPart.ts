import { relationIn, relationsPart } from '../xlsx/relationsOf.js';
import type { ElementAt } from '../xml/elementAt.js';
import { EntryList } from './entryList.js';
import type { OpenParts } from './openParts.js';

const transitional = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

interface NewPart {
  /** The last step of the type of its relation, such as `sheetMetadata`. */
  readonly type: string;
  /** Its name in the folder of the part that leads to it. */
  readonly name: string;
  readonly contentType: string;
  readonly text: string;
}

/** The part that another one leads to by a relation of this type. */
export function linkedPart(parts: OpenParts, from: string, type: string): string | undefined {
  return links(parts, from)
    .entries()
    .map(({ attributes }) => relationIn(attributes, from))
    .find((relation) => relation?.type === type)?.part;
}

/** Adds a part with its relation and its content type, and gives its full name. */
export function addLinkedPart(parts: OpenParts, from: string, { type, name, contentType, text }: NewPart): string {
  const list = links(parts, from);
  const entries = list.entries();
  const types = entries.map(({ attributes }) => attributes['Type'] ?? '');
  const like = types.find((one) => one.includes('/officeDocument/'));
  const base = like === undefined ? transitional : like.slice(0, like.lastIndexOf('/'));
  const taken = new Set(entries.map(({ attributes }) => attributes['Id']));
  let number = entries.length + 1;
  while (taken.has(`rId${number}`)) number += 1;
  list.add({ Id: `rId${number}`, Type: `${base}/${type}`, Target: name });
  const part = `${from.slice(0, from.lastIndexOf('/') + 1)}${name}`;
  const kinds = contentTypes(parts);
  if (kinds.entries().every((entry) => !isOf(entry, part))) {
    kinds.add({ PartName: `/${part}`, ContentType: contentType });
  }
  parts.put(part, text);
  return part;
}

/** Removes the part of this relation type, with its relation and its content type. */
export function removeLinkedPart(parts: OpenParts, from: string, type: string): void {
  const list = links(parts, from);
  for (const entry of list.entries()) {
    const relation = relationIn(entry.attributes, from);
    if (relation?.type !== type) continue;
    list.remove(entry);
    const kinds = contentTypes(parts);
    const kind = kinds.entries().find((one) => isOf(one, relation.part));
    if (kind !== undefined) kinds.remove(kind);
    parts.remove(relation.part);
    return;
  }
}

function links(parts: OpenParts, from: string): EntryList {
  return new EntryList(parts, relationsPart(from), 'Relationship');
}

function contentTypes(parts: OpenParts): EntryList {
  return new EntryList(parts, '[Content_Types].xml', 'Override');
}

function isOf({ attributes }: ElementAt, part: string): boolean {
  return attributes['PartName']?.toLowerCase() === `/${part.toLowerCase()}`;
}
