import { zipped } from './xlsxOf';

const oasis = 'urn:oasis:names:tc:opendocument:xmlns:';
const namespaces = [
  ['office', `${oasis}office:1.0`],
  ['table', `${oasis}table:1.0`],
  ['text', `${oasis}text:1.0`],
  ['style', `${oasis}style:1.0`],
  ['number', `${oasis}datastyle:1.0`],
  ['draw', `${oasis}drawing:1.0`],
  ['calcext', 'urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0'],
]
  .map(([prefix, uri]) => `xmlns:${prefix}="${uri}"`)
  .join(' ');

export interface OdsPlan {
  /** Inside `office:spreadsheet`. */
  readonly body: string;
  /** Automatic styles of the content. */
  readonly styles?: string;
  /** Styles of the document. */
  readonly common?: string;
  readonly parts?: Readonly<Record<string, string | Uint8Array>>;
}

/** An .ods file written by hand. */
export function odsOf(plan: OdsPlan): Uint8Array {
  return zipped({
    mimetype: 'application/vnd.oasis.opendocument.spreadsheet',
    'content.xml':
      `<?xml version="1.0" encoding="UTF-8"?><office:document-content ${namespaces}><office:automatic-styles>${plan.styles ?? ''}</office:automatic-styles>` +
      `<office:body><office:spreadsheet>${plan.body}</office:spreadsheet></office:body></office:document-content>`,
    'styles.xml': `<office:document-styles ${namespaces}><office:styles>${plan.common ?? ''}</office:styles></office:document-styles>`,
    ...plan.parts,
  });
}

export const odsNamespaces = namespaces;
