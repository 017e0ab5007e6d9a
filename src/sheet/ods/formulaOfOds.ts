import { referenceOf } from './referenceOf.js';

/** What opens and never closes reaches to the end, so that no formula is looked through twice. */
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

/** A function the program did not know stands in small letters, behind marks that are never in capitals. */
function functionName(name: string): string {
  const mark = marks.exec(name)?.[0] ?? '';
  return mark.toLowerCase() + name.slice(mark.length).toUpperCase().replace(origin, '');
}
