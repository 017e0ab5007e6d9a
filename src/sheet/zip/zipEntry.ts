/** One part of a zip archive, as its central directory lists it and its local header confirms it. */
export interface ZipEntry {
  readonly name: string;
  /** 0: stored as it is, 8: deflated. */
  readonly method: 0 | 8;
  readonly crc: number;
  readonly compressedSize: number;
  readonly size: number;
  /** Where its local header begins. */
  readonly headerStart: number;
  /** Where its compressed bytes begin. */
  readonly dataStart: number;
  /** Where its record in the central directory begins, and its length. */
  readonly recordStart: number;
  readonly recordLength: number;
}
