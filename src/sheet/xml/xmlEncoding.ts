import { FileProblem } from '../zip/fileProblem.js';

/** A decoder for an XML part: by its first bytes, else by its own declaration, else UTF-8. */
export function xmlDecoder(bytes: Uint8Array, part: string): TextDecoder {
  try {
    return new TextDecoder(wideEncoding(bytes) ?? declaredEncoding(bytes), { fatal: true });
  } catch {
    throw new FileProblem(
      `The file is damaged: its part ${JSON.stringify(part)} is written in an encoding that is not known here.`,
    );
  }
}

/** UTF-16 by a mark, or by the first letter, at the start; undefined for anything else. */
export function wideEncoding(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0x3c && second === 0)) return 'utf-16le';
  if ((first === 0xfe && second === 0xff) || (first === 0 && second === 0x3c)) return 'utf-16be';
  return undefined;
}

/** The encoding that a part without a mark for UTF-16 says it has. */
export function declaredEncoding(bytes: Uint8Array): string {
  const start = String.fromCharCode(...bytes.subarray(0, 200));
  const declared = /^(?:ï»¿)?<\?xml[^>]*?encoding\s*=\s*["']([^"']*)["']/.exec(start)?.[1] ?? 'utf-8';
  // A part that can be read this far by single bytes is not in UTF-16, whatever it says.
  return /^utf-?16/i.test(declared) ? 'utf-8' : declared;
}
