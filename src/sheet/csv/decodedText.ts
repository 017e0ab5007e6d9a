import { FileProblem } from '../zip/fileProblem.js';

interface DecodedText {
  readonly text: string;
  /** As a remark names it. */
  readonly encoding: string;
}

/** The largest share of control characters that a text may have. */
const mostControls = 1 / 100;
const checked = 100_000;

/** UTF-8, UTF-16 where its first two bytes say so, else western European letters. Anything that is not text is refused. */
export function decodedText(bytes: Uint8Array): DecodedText {
  const decoded = decodedBy(bytes);
  if (isBinary(decoded.text)) {
    throw new FileProblem(
      'The file is not text: it holds bytes that text never has; save the sheet as csv in UTF-8, or give the workbook itself',
    );
  }
  return decoded;
}

function decodedBy(bytes: Uint8Array): DecodedText {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return { text: new TextDecoder('utf-16le').decode(bytes), encoding: 'UTF-16' };
  if (first === 0xfe && second === 0xff) return { text: new TextDecoder('utf-16be').decode(bytes), encoding: 'UTF-16' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' };
  } catch {
    return {
      text: westernText(bytes),
      encoding: 'code page 1252 (western European letters; it is not UTF-8)',
    };
  }
}

/** What code page 1252 has from 0x80 to 0x9f; decoders of some runtimes read latin-1 for it. */
const western = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ';

function westernText(bytes: Uint8Array): string {
  return new TextDecoder('latin1')
    .decode(bytes)
    .replace(/[\x80-\x9f]/g, (letter) => western[letter.charCodeAt(0) - 0x80] ?? letter);
}

function isBinary(text: string): boolean {
  if (text.includes('\0')) return true;
  const start = text.slice(0, checked);
  // eslint-disable-next-line no-control-regex
  const controls = start.match(/[\x01-\x08\x0e-\x1f]/g)?.length ?? 0;
  return controls > start.length * mostControls;
}
