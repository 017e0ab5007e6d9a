import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { generateCustomFunctionsMetadata } from 'custom-functions-metadata';
import { contract, unitOf } from './contract.js';
import { standInHost } from './host/standInHost.js';

const folder = resolve('functions');
const files = readdirSync(folder)
  .map((name) => join(folder, name))
  .filter((file) => readFileSync(file, 'utf8').includes('@customfunction'));
const { metadata, associated } = standInHost();
const byName = new Map(metadata.functions.map((entry) => [entry.name, entry]));
const described = contract.map((entry) => ({ ...entry, words: [...entry.required, ...entry.optional] }));

/** A1 to XFD1048576, and the row-and-column way of writing a cell. */
const looksLikeACell = (name: string): boolean =>
  /^[A-Z]{1,3}\d{1,7}$/i.test(name) || /^R\d*C\d*$|^[RC]\d*$/i.test(name);

describe('the metadata of the cell functions', () => {
  it('is generated without an error, and every wrapper tagged in the source is in it', async () => {
    const generated = await generateCustomFunctionsMetadata(files);
    expect(generated.errors).toEqual([]);
    const tags = files.flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/@customfunction\s+(\S+)/g)].map((m) => m[1]),
    );
    expect(generated.associate.map((entry) => entry.id)).toEqual(tags);
    expect(metadata.functions.map((entry) => entry.id).sort()).toEqual([...tags].sort());
  });

  it('names every function exactly as the contract does, each id once, and the bundle associates each', () => {
    const names = contract.map((entry) => entry.name).sort();
    expect(metadata.functions.map((entry) => entry.name).sort()).toEqual(names);
    expect(metadata.functions.map((entry) => entry.id).sort()).toEqual(names);
    expect([...associated].sort()).toEqual(names);
    expect(new Set(names).size).toBe(names.length);
  });

  it('has names of three or more capitals that no spreadsheet takes for a cell', () => {
    expect(['A1', 'XFD1048576', 'ABC123', 'R1C1', 'RC', 'C'].every(looksLikeACell)).toBe(true);
    for (const { name } of metadata.functions) {
      expect(name).toMatch(/^[A-Z]{3,}$/);
      expect(looksLikeACell(name)).toBe(false);
    }
  });

  it('lets error cells and rich cells in, so that their row can be named', () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    expect(metadata.allowCustomDataForDataTypeAny).toBe(true);
  });

  it('makes nothing volatile, streaming or in need of an address', () => {
    for (const entry of metadata.functions) expect(entry.options ?? {}).toEqual({});
  });

  it.each(metadata.functions.map((entry) => [entry.name, entry] as const))('%s is described in short', (_, entry) => {
    const description = entry.description ?? '';
    expect(description).toMatch(/^[A-Z0-9].*\.$/s);
    expect(description).not.toMatch(/\{@|\n/);
    expect(description.length).toBeLessThanOrEqual(255);
    for (const parameter of entry.parameters) {
      const text = parameter.description ?? '';
      expect(text).toMatch(/^[A-Z0-9"].*(\.|\. \[[^\]]+\])$/s);
      expect(text.length).toBeLessThanOrEqual(128);
      expect([parameter.name, text.includes('If omitted')]).toEqual([parameter.name, parameter.optional === true]);
      expect(parameter.type).toBe('any');
      expect(parameter.name).toMatch(/^[a-z][A-Za-z]*$/);
    }
  });

  it.each(described.map((entry) => [entry.name, entry] as const))(
    '%s takes the arguments of the contract',
    (name, entry) => {
      const parameters = byName.get(name)?.parameters ?? [];
      expect(parameters.length).toBe(entry.words.length);
      expect(parameters.filter((parameter) => parameter.optional !== true).length).toBe(entry.required.length);
      expect(parameters.slice(0, entry.required.length).every((parameter) => parameter.optional !== true)).toBe(true);
      const units = parameters.map(({ description = '' }) =>
        /\[([^\]]+)\]/.exec(description)?.[1]?.replace('mg Cu/', 'mg/'),
      );
      entry.words.forEach((word, i) => {
        const unit = unitOf[word];
        if (unit !== undefined) expect(`${word} [${units[i]}]`).toContain(`[${unit}`);
      });
    },
  );
});
