import { partOf } from '../zip/partOf.js';
import { zipEntries, type ZipEntry } from '../zip/zipEntries.js';
import { zipWith } from '../zip/zipWith.js';
import { partText, type PartText } from './partText.js';
import { zipWithout } from './zipWithout.js';

/** The parts of a file as text while they are being changed. */
export class OpenParts {
  private readonly entries: ReadonlyMap<string, ZipEntry>;
  private readonly read = new Map<string, PartText>();
  private readonly changed = new Map<string, string>();
  private readonly removed = new Set<string>();

  constructor(private readonly packed: Uint8Array) {
    // Names of parts do not tell capitals from small letters.
    this.entries = new Map(zipEntries(packed).map((entry) => [entry.name.toLowerCase(), entry]));
  }

  text(name: string): string | undefined {
    const entry = this.entries.get(name.toLowerCase());
    if (!entry) return this.changed.get(name);
    return this.changed.get(entry.name) ?? this.part(entry).text;
  }

  /** As it came, unpacked. */
  bytes(name: string): Uint8Array | undefined {
    const entry = this.entries.get(name.toLowerCase());
    return entry && partOf(this.packed, entry);
  }

  put(name: string, text: string): void {
    if (text !== this.text(name)) this.changed.set(this.entries.get(name.toLowerCase())?.name ?? name, text);
  }

  remove(name: string): void {
    const entry = this.entries.get(name.toLowerCase());
    if (entry) this.removed.add(entry.name);
  }

  /** The file with its changed parts; the very same bytes where none changed. */
  file(): Uint8Array {
    const bytes = this.removed.size === 0 ? this.packed : zipWithout(this.packed, this.removed);
    if (this.changed.size === 0) return bytes;
    const parts = [...this.changed].map(([name, text]): [string, Uint8Array] => {
      return [name, this.read.get(name)?.bytesOf(text) ?? new TextEncoder().encode(text)];
    });
    return zipWith(bytes, new Map(parts));
  }

  private part(entry: ZipEntry): PartText {
    const known = this.read.get(entry.name) ?? partText(partOf(this.packed, entry), entry.name);
    this.read.set(entry.name, known);
    return known;
  }
}
