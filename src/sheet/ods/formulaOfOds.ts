/** What opens and never closes reaches to the end, so that no formula is searched twice. */
const token =
  /"(?:[^"]|"")*(?:"|$)|\[(?:'(?:[^']|'')*(?:'|$)|[^\]'])*(?:\]|$)|[\p{L}_][\p{L}\p{N}_.]*(\s*\()?|[{}|;~!]/gu;
/** Functions that the open format names by where they come from. */
const origin = /^(?:COM\.MICROSOFT|ORG\.(?:OPENOFFICE|LIBREOFFICE)|LEGACY)\./i;
const marks = /^(?:_xldudf_|_xlfn\.|_xlws\.|_xlpm\.)+/i;

/** A formula of an .ods file in the form workbooks store: `A1` references with `Log!`, commas, names in capitals. */
export function formulaOfOds(stored: string): string {
  const text = stored.replace(/^\s*(?:[A-Za-z]\w*:)?=/, '');
  if (/^\s*msoxl:/.test(stored)) return text;
  let inArray = false;
  return text.replace(token, (found, call?: string) => {
    switch (found) {
      case '{':
      case '}':
        inArray = found === '{';
        return found;
      case '|':
        return inArray ? ';' : found;
      case ';':
      case '~':
        return ',';
      case '!':
        return ' ';
    }
    if (found.startsWith('[')) return referenceOf(found.slice(1, -1));
    return call === undefined ? found : functionName(found);
  });
}

/** A function that the program did not know is in small letters; the marks before a name never are in capitals. */
function functionName(name: string): string {
  const mark = marks.exec(name)?.[0] ?? '';
  return mark.toLowerCase() + name.slice(mark.length).toUpperCase().replace(origin, '');
}

const end = /^(?:('(?:[^']|'')*')#)?(?:\$?('(?:[^']|'')*'|[^.'#]*))?\.(.+)$/;
const bare = /^[\p{L}_][\p{L}\p{N}_]*$/u;
const likeCell = /^(?:[A-Za-z]{1,3}\d+|[Rr]\d*(?:[Cc]\d*)?|[Cc]\d*)$/;

/** A reference of an .ods file without its brackets, such as `$Log.$A$1:.$F$60`, as `Log!$A$1:$F$60`. */
export function referenceOf(text: string): string {
  if (text.includes('#REF!')) return '#REF!';
  const [first = '', last] = text.match(/(?:'(?:[^']|'')*'|[^':])+/g) ?? [];
  // A colon in a file's address is inside quotes, so two pieces are two cells.
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
