import { FileProblem } from '../zip/fileProblem.js';

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be';

/** An XML part as text, its byte order mark included, and the way back to bytes in the same encoding. */
export interface PartText {
  readonly text: string;
  bytesOf(text: string): Uint8Array;
}

/** Text that goes back to the very same bytes, or a refusal. */
export function partText(bytes: Uint8Array, part: string): PartText {
  const encoding = encodingOf(bytes);
  const text = decoded(bytes, encoding, part);
  const declared = /^\uFEFF?<\?xml[^>]*?encoding\s*=\s*["']([^"']+)["']/.exec(text.slice(0, 200))?.[1];
  if (encoding === 'utf-8' && declared !== undefined && !/^(utf-?8|us-ascii|ascii)$/i.test(declared)) {
    throw new FileProblem(
      `${part} in the file is written in the encoding ${declared}, only UTF-8 and UTF-16 can be changed: save the file anew with your spreadsheet program.`,
    );
  }
  return {
    text,
    bytesOf: (changed) => (encoding === 'utf-8' ? new TextEncoder().encode(changed) : utf16(changed, encoding)),
  };
}

function encodingOf(bytes: Uint8Array): Encoding {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0x3c && second === 0)) return 'utf-16le';
  if ((first === 0xfe && second === 0xff) || (first === 0 && second === 0x3c)) return 'utf-16be';
  return 'utf-8';
}

function decoded(bytes: Uint8Array, encoding: Encoding, part: string): string {
  try {
    return new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new FileProblem(
      `${part} in the file holds bytes that are not text, nothing was changed: save the file anew with your spreadsheet program.`,
    );
  }
}

function utf16(text: string, encoding: Encoding): Uint8Array {
  const view = new DataView(new ArrayBuffer(text.length * 2));
  for (let index = 0; index < text.length; index += 1) {
    view.setUint16(index * 2, text.charCodeAt(index), encoding === 'utf-16le');
  }
  return new Uint8Array(view.buffer);
}
