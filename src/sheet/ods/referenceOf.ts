const end = /^(?:('(?:[^']|'')*')#)?(?:\$?('(?:[^']|'')*'|[^.'#]*))?\.(.+)$/;
const bare = /^[\p{L}_][\p{L}\p{N}_]*$/u;
const likeCell = /^(?:[A-Za-z]{1,3}\d+|[Rr]\d*(?:[Cc]\d*)?|[Cc]\d*)$/;

/** A reference of an .ods file without its brackets, such as `$Log.$A$1:.$F$60`, as `Log!$A$1:$F$60`. */
export function referenceOf(text: string): string {
  if (text.includes('#REF!')) return '#REF!';
  const [first = '', last] = text.match(/(?:'(?:[^']|'')*'|[^':])+/g) ?? [];
  // The colon of a file's address stands in quotes, so that two parts are two cells.
  const from = end.exec(first);
  const to = last === undefined ? null : end.exec(last);
  if (from === null) return text;
  const sheet = unquoted(from[2] ?? '');
  const lastSheet = unquoted(to?.[2] ?? '');
  const file = from[1] === undefined ? '' : `[${unquoted(from[1])}]`;
  const sheets = lastSheet === '' || lastSheet === sheet ? `${file}${sheet}` : `${file}${sheet}:${lastSheet}`;
  const cells = to?.[3] === undefined ? (from[3] ?? '') : `${from[3]}:${to[3]}`;
  return sheets === '' ? cells : `${quotedSheet(sheets)}!${cells}`;
}

function quotedSheet(name: string): string {
  return name.split(':').every((part) => bare.test(part) && !likeCell.test(part))
    ? name
    : `'${name.replace(/'/g, "''")}'`;
}

function unquoted(name: string): string {
  return name.startsWith("'") ? name.slice(1, -1).replace(/''/g, "'") : name;
}
