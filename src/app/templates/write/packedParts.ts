import { zipSync, type Zippable } from 'fflate';
import { xmlText, partOf, zipEntries } from '../../../sheet/index.js';
import type { TemplatePlan } from '../plan/templatePlan.js';

const typesPart = '[Content_Types].xml';
const propertiesPart = 'docProps/core.xml';

/**
 * The parts of a new workbook with its properties, packed in a fixed order and with one date: the same workbook is always
 * the same file, and does not reveal the clock of the machine it was made on.
 *
 * @param drawn parts that replace the writer's own, by name
 * @param made such as `2026-03-01T08:00:00Z`
 */
export function packedParts(
  bytes: Uint8Array,
  drawn: ReadonlyMap<string, string>,
  { plan, made }: { readonly plan: TemplatePlan; readonly made: string },
): Uint8Array {
  const own = new Map([...drawn, [propertiesPart, propertiesXml(plan, made)]]);
  const encoder = new TextEncoder();
  const parts = zipEntries(bytes).map((entry): readonly [string, Uint8Array] => {
    const text = own.get(entry.name);
    if (text !== undefined) return [entry.name, encoder.encode(text)];
    const part = partOf(bytes, entry);
    return [entry.name, entry.name === typesPart ? withoutPictures(part) : part];
  });
  parts.sort(([a], [b]) => (a === typesPart ? -1 : b === typesPart ? 1 : a < b ? -1 : 1));
  // The packer writes local time, so it is given the fields of the moment as they are.
  const [date = '', time = ''] = made.replace('Z', '').split('T');
  const mtime = new Date(`${date}T${time}`);
  const packed: Zippable = Object.fromEntries(parts.map(([name, part]) => [name, [part, { mtime, level: 6 }]]));
  return zipSync(packed);
}

/** Without the types of pictures: a template has none, and the writer lists them in random order. */
function withoutPictures(part: Uint8Array): Uint8Array {
  const types = new TextDecoder().decode(part);
  return new TextEncoder().encode(types.replace(/<Default Extension="(?!xml"|rels")[^>]*><\/Default>/g, ''));
}

const namespaces =
  'xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" ' +
  'xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" ' +
  'xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"';

/** What the workbook says of itself. The writer leaves out the prefix `cp`, without which some libraries do not open it. */
function propertiesXml({ title, subject, description }: TemplatePlan, made: string): string {
  const moment = (tag: string): string => `<dcterms:${tag} xsi:type="dcterms:W3CDTF">${made}</dcterms:${tag}>`;
  const element = (tag: string, text: string): string => `<dc:${tag}>${xmlText(text)}</dc:${tag}>`;
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<cp:coreProperties ${namespaces}>` +
    `${element('title', title)}${element('subject', subject)}<dc:creator>Lazaret</dc:creator>` +
    '<cp:keywords>copper, quarantine, marine fish, log</cp:keywords>' +
    `${element('description', description)}<cp:lastModifiedBy>Lazaret</cp:lastModifiedBy>` +
    `${moment('created')}${moment('modified')}<cp:category>Quarantine log</cp:category><dc:language>en</dc:language>` +
    '</cp:coreProperties>'
  );
}
