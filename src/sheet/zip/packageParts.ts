import { partOf } from './partOf.js';
import type { ZipEntry } from './zipEntries.js';

/** The parts of a package by name, in which capital letters make no difference. */
export interface PackageParts {
  has(name: string): boolean;
  /** Undefined where there is none. */
  bytes(name: string): Uint8Array | undefined;
}

export function packageParts(bytes: Uint8Array, entries: readonly ZipEntry[]): PackageParts {
  const byName = new Map(entries.map((entry) => [entry.name.toLowerCase(), entry]));
  return {
    has: (name) => byName.has(name.toLowerCase()),
    bytes: (name) => {
      const entry = byName.get(name.toLowerCase());
      return entry === undefined ? undefined : partOf(bytes, entry);
    },
  };
}
