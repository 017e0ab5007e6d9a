import { FileProblem } from '../zip/fileProblem.js';

/** A decoder for an XML part: by its first bytes, else by its own declaration, else UTF-8. */
export function xmlDecoder(bytes: Uint8Array, part: string): TextDecoder {
  try {
    return new TextDecoder(encodingOf(bytes), { fatal: true });
  } catch {
    throw new FileProblem(`The file is damaged: its part ${JSON.stringify(part)} is written in letters nobody knows.`);
  }
}

function encodingOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0x3c && second === 0)) return 'utf-16le';
  if ((first === 0xfe && second === 0xff) || (first === 0 && second === 0x3c)) return 'utf-16be';
  const start = String.fromCharCode(...bytes.subarray(0, 200));
  const declared = /^(?:ï»¿)?<\?xml[^>]*?encoding\s*=\s*["']([^"']*)["']/.exec(start)?.[1] ?? 'utf-8';
  // A part that can be read this far by single bytes is not in UTF-16, whatever it says.
  return /^utf-?16/i.test(declared) ? 'utf-8' : declared;
}
