/** The name of a file may say anything; its first bytes do not. */
type FileKind =
  | 'zip'
  | 'text'
  | 'empty'
  | 'old'
  | 'encrypted'
  | 'markup'
  | 'workbook-xml'
  | 'document'
  | 'packed'
  | 'picture'
  | 'binary';

const starts: readonly (readonly [kind: FileKind, bytes: string])[] = [
  ['zip', 'PK\x03\x04'],
  ['zip', 'PK\x05\x06'],
  ['document', '%PDF'],
  ['document', '{\\rtf'],
  ['packed', '\x1f\x8b'],
  ['packed', '7z\xbc\xaf'],
  ['packed', 'Rar!'],
  ['picture', '\x89PNG'],
  ['picture', '\xff\xd8\xff'],
  ['picture', 'GIF8'],
];
const compoundFile = '\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1';
/** How pages and XML begin; a mere `<` may also begin a number below what could be measured. */
const markupStart =
  /^(?:\xef\xbb\xbf|\xff\xfe|\xfe\xff)?\s*<(?:\?xml|!doctype|!--|(?:html|head|body|meta|table|div|style|script|svg)[\s/>]|[\w:.-]+\s+xmlns)/i;

/** What a file is by its first bytes. */
export function fileKind(bytes: Uint8Array): FileKind {
  if (bytes.length === 0) return 'empty';
  const start = latin1(bytes.subarray(0, 4096));
  const found = starts.find(([, first]) => start.startsWith(first));
  if (found !== undefined) return found[0];
  if (start.startsWith(compoundFile)) return holdsWide(bytes, 'EncryptedPackage') ? 'encrypted' : 'old';
  const letters = start.replace(/\0/g, '');
  if (markupStart.test(letters)) return markup(letters);
  const wide = start.startsWith('\xff\xfe') || start.startsWith('\xfe\xff');
  return !wide && start.includes('\0') && !looksWide(bytes) ? 'binary' : 'text';
}

function markup(start: string): FileKind {
  const opens = /<(?:\w+:)?(?:Workbook|document)\b/.test(start);
  return opens ? 'workbook-xml' : 'markup';
}

/** Text in UTF-16 without a mark: every other byte is 0. */
function looksWide(bytes: Uint8Array): boolean {
  const part = bytes.subarray(0, 512);
  const zeros = [0, 1].map((odd) => part.filter((byte, index) => byte === 0 && index % 2 === odd).length);
  return zeros.some((count, odd) => count * 2 > part.length * 0.7 && zeros[1 - odd] === 0);
}

/** Names in a compound file are written with two bytes a letter. */
function holdsWide(bytes: Uint8Array, name: string): boolean {
  const wanted = Uint8Array.from([...name].flatMap((letter) => [letter.charCodeAt(0), 0]));
  for (let at = bytes.indexOf(wanted[0] ?? 0); at >= 0; at = bytes.indexOf(wanted[0] ?? 0, at + 1)) {
    if (wanted.every((byte, index) => bytes[at + index] === byte)) return true;
  }
  return false;
}

function latin1(bytes: Uint8Array): string {
  return bytes.reduce((text, byte) => text + String.fromCharCode(byte), '');
}

/** Why a file of this kind is not read, and what to do; undefined for those that are. */
export function refusalOf(kind: FileKind): string | undefined {
  switch (kind) {
    case 'zip':
    case 'text':
      return undefined;
    case 'empty':
      return 'The file is empty; save the workbook again.';
    case 'old':
      return 'The file is a workbook in the old binary format (.xls); open it in a spreadsheet program and save it as .xlsx.';
    case 'encrypted':
      return 'The file is protected by a password; open it in a spreadsheet program and save a copy without one as .xlsx.';
    case 'markup':
      return 'The file is a web page or other XML, whatever its name says; open it in a spreadsheet program and save it as .xlsx.';
    case 'workbook-xml':
      return 'The file is a workbook written as one XML text; open it in a spreadsheet program and save it as .xlsx.';
    case 'document':
      return 'The file is a document to be read or printed and has no cells; save the workbook it came from as .xlsx.';
    case 'packed':
      return 'The file is a packed archive; unpack it, and give the workbook in it as .xlsx, .ods or .csv.';
    case 'picture':
      return 'The file is a picture and has no cells; save the workbook it shows as .xlsx.';
    case 'binary':
      return 'The file is neither a workbook nor text; give it as .xlsx, .xlsm, .ods, .csv or .tsv.';
  }
}
