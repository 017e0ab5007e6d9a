const oasis = 'urn:oasis:names:tc:opendocument:xmlns:';

/** The namespaces of an .ods file that matter for its cells, by the prefixes they are known under. */
export const odsPrefixes: ReadonlyMap<string, string> = new Map([
  [`${oasis}office:1.0`, 'office'],
  [`${oasis}table:1.0`, 'table'],
  [`${oasis}text:1.0`, 'text'],
  [`${oasis}style:1.0`, 'style'],
  [`${oasis}datastyle:1.0`, 'number'],
  [`${oasis}drawing:1.0`, 'draw'],
  [`${oasis}xsl-fo-compatible:1.0`, 'fo'],
  [`${oasis}manifest:1.0`, 'manifest'],
  ['urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0', 'calcext'],
]);
