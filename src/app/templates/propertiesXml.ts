import type { TemplatePlan } from './templatePlan.js';
import { xmlText } from './xmlText.js';

export const propertiesPart = 'docProps/core.xml';

const namespaces =
  'xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" ' +
  'xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" ' +
  'xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"';

/**
 * What the workbook says of itself. The writer leaves out the prefix `cp`, without which some libraries do not open it.
 * @param made such as `2026-03-01T08:00:00Z`
 */
export function propertiesXml({ title, subject, description }: TemplatePlan, made: string): string {
  const moment = (tag: string): string => `<dcterms:${tag} xsi:type="dcterms:W3CDTF">${made}</dcterms:${tag}>`;
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<cp:coreProperties ${namespaces}>` +
    `<dc:title>${xmlText(title)}</dc:title><dc:subject>${xmlText(subject)}</dc:subject><dc:creator>Lazaret</dc:creator>` +
    '<cp:keywords>copper, quarantine, marine fish, log</cp:keywords>' +
    `<dc:description>${xmlText(description)}</dc:description><cp:lastModifiedBy>Lazaret</cp:lastModifiedBy>` +
    `${moment('created')}${moment('modified')}<cp:category>Quarantine log</cp:category><dc:language>en</dc:language>` +
    '</cp:coreProperties>'
  );
}
