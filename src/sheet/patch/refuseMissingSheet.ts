import { FileProblem } from '../zip/fileProblem.js';

/** Throws where a sheet to write to is none of the file. */
export function refuseMissingSheet(asked: Iterable<string>, sheets: ReadonlyMap<string, unknown>): void {
  for (const name of asked) {
    if (sheets.has(name)) continue;
    const names = [...sheets.keys()].map((one) => `"${one}"`).join(', ');
    throw new FileProblem(`There is no sheet "${name}" to write to in the file, name one of its sheets: ${names}.`);
  }
}
