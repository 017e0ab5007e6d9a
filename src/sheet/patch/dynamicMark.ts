import { prefixOf } from '../xml/elementAt.js';
import { addLinkedPart, linkedPart } from './linkedPart.js';
import { metadataMap, type MetadataMap } from './metadataMap.js';
import type { OpenParts } from './openParts.js';
import { spliced, type Splice, withEntry } from './splice.js';

const kind =
  'name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" ' +
  'rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"';
const property =
  '<extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
  '<xda:dynamicArrayProperties xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray" ' +
  'fDynamic="1" fCollapsed="0"/></ext></extLst>';
const metadata = {
  type: 'sheetMetadata',
  name: 'metadata.xml',
  contentType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml',
  text:
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"></metadata>',
};

/**
 * The number that the attribute `cm` of a cell needs for its formula to be a dynamic array. A file without
 * metadata gets the part `xl/metadata.xml` and what leads to it; existing metadata is kept and added to.
 */
export function dynamicMark(parts: OpenParts, workbook: string): string {
  const part = linkedPart(parts, workbook, metadata.type) ?? addLinkedPart(parts, workbook, metadata);
  const text = parts.text(part) ?? metadata.text;
  const known = metadataMap(text, part);
  if (known.dynamicCell !== undefined) return String(known.dynamicCell + 1);
  parts.put(part, spliced(text, additions(text, known)));
  return String(known.cells.count + 1);
}

/** What is missing of the kind of metadata, its property, and the entry that cells refer to. */
function additions(text: string, known: MetadataMap): Splice[] {
  const prefix = prefixOf(known.root);
  const named = (xml: string): string => xml.replace(/<(\/?)(?!xda:|\/)/g, `<$1${prefix}`);
  const splices: Splice[] = [];
  if (known.kindIndex === undefined) {
    splices.push(...grown(text, known, 'kinds', named(`<metadataType ${kind}/>`), prefix));
  }
  if (known.propertyIndex === undefined) {
    const entry = named(`<bk>${property}</bk>`);
    if (known.future.at) splices.push(...grown(text, known, 'future', entry, prefix));
    else {
      const whole = `<${prefix}futureMetadata name="XLDAPR" count="1">${entry}</${prefix}futureMetadata>`;
      splices.push({ from: known.future.place, to: known.future.place, text: whole });
    }
  }
  const record = `<rc t="${(known.kindIndex ?? known.kinds.count) + 1}" v="${known.propertyIndex ?? known.future.count}"/>`;
  return [...splices, ...grown(text, known, 'cells', named(`<bk>${record}</bk>`), prefix)];
}

function grown(
  text: string,
  known: MetadataMap,
  what: 'kinds' | 'future' | 'cells',
  entry: string,
  prefix: string,
): Splice[] {
  const { at, place, count, name } = known[what];
  const tag = `${prefix}${name}`;
  if (!at) return [{ from: place, to: place, text: `<${tag} count="1">${entry}</${tag}>` }];
  return withEntry(text, at, entry, { count: String(count + 1) });
}
