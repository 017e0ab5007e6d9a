import { declaredEncoding, wideEncoding } from '../xml/xmlEncoding.js';
import { FileProblem } from '../zip/fileProblem.js';

/** An XML part as text, its byte order mark included, and the way back to bytes in the same encoding. */
export interface PartText {
  readonly text: string;
  bytesOf(text: string): Uint8Array;
}

/** The part as text that can be turned back into the very same bytes; refuses other encodings. */
export function partText(bytes: Uint8Array, part: string): PartText {
  const wide = wideEncoding(bytes);
  const text = decoded(bytes, wide ?? 'utf-8', part);
  const declared = declaredEncoding(bytes);
  if (wide === undefined && !/^(utf-?8|us-ascii|ascii)$/i.test(declared)) {
    throw new FileProblem(
      `${part} in the file is written in the encoding ${declared}, only UTF-8 and UTF-16 can be changed: save the file again with your spreadsheet program.`,
    );
  }
  return {
    text,
    bytesOf: (changed) => (wide === undefined ? new TextEncoder().encode(changed) : utf16(changed, wide)),
  };
}

function decoded(bytes: Uint8Array, encoding: string, part: string): string {
  try {
    return new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new FileProblem(
      `${part} in the file holds bytes that are not text, nothing was changed: save the file again with your spreadsheet program.`,
    );
  }
}

function utf16(text: string, encoding: 'utf-16le' | 'utf-16be'): Uint8Array {
  const view = new DataView(new ArrayBuffer(text.length * 2));
  for (let index = 0; index < text.length; index += 1) {
    view.setUint16(index * 2, text.charCodeAt(index), encoding === 'utf-16le');
  }
  return new Uint8Array(view.buffer);
}
