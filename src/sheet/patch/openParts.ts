import type { PackageParts } from '../zip/packageParts.js';
import { partOf } from '../zip/partOf.js';
import { zipEntries, type ZipEntry } from '../zip/zipEntries.js';
import { zipWith } from '../zip/zipWith.js';
import { partText, type PartText } from './partText.js';

/** The parts of a file as text while they are being changed. */
export class OpenParts implements PackageParts {
  private readonly entries: ReadonlyMap<string, ZipEntry>;
  private readonly read = new Map<string, PartText>();
  /** By the names in the archive; null for a part that is taken out. */
  private readonly changed = new Map<string, string | null>();

  constructor(private readonly packed: Uint8Array) {
    this.entries = new Map(zipEntries(packed).map((entry) => [entry.name.toLowerCase(), entry]));
  }

  has(name: string): boolean {
    return this.entries.has(name.toLowerCase());
  }

  /** Unpacked, as in the original file. */
  bytes(name: string): Uint8Array | undefined {
    const entry = this.entries.get(name.toLowerCase());
    return entry && partOf(this.packed, entry);
  }

  text(name: string): string | undefined {
    const entry = this.entries.get(name.toLowerCase());
    if (!entry) return this.changed.get(name) ?? undefined;
    return this.changed.get(entry.name) ?? this.part(entry).text;
  }

  put(name: string, text: string): void {
    if (text !== this.text(name)) this.changed.set(this.entries.get(name.toLowerCase())?.name ?? name, text);
  }

  remove(name: string): void {
    const entry = this.entries.get(name.toLowerCase());
    if (entry) this.changed.set(entry.name, null);
  }

  /** The file with its changed parts; the very same bytes where none changed. */
  file(): Uint8Array {
    if (this.changed.size === 0) return this.packed;
    const parts = [...this.changed].map(([name, text]): [string, Uint8Array | null] => {
      return [name, text === null ? null : (this.read.get(name)?.bytesOf(text) ?? new TextEncoder().encode(text))];
    });
    return zipWith(this.packed, new Map(parts));
  }

  private part(entry: ZipEntry): PartText {
    const known = this.read.get(entry.name) ?? partText(partOf(this.packed, entry), entry.name);
    this.read.set(entry.name, known);
    return known;
  }
}
