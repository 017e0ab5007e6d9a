import { existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { recalcTargets } from '../../../src/app/cli/targets.js';

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'lazaret-targets-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string): string => join(folder, name);
const targets = (files: readonly string[], out: string, paths = files): string[] =>
  recalcTargets(files, { paths, out });

describe('recalcTargets', () => {
  it('takes one file to the file named, or into a folder named', () => {
    expect(targets(['a.xlsx'], at('b.xlsx'))).toEqual([at('b.xlsx')]);
    expect(targets(['a.XLSX'], at('b.xlsx'))).toEqual([at('b.xlsx')]);
    expect(targets(['a.xlsx'], folder)).toEqual([at('a.xlsx')]);
    expect(targets(['a.xlsx'], `${at('new')}/`)).toEqual([at('new/a.xlsx')]);
    expect(statSync(at('new')).isDirectory()).toBe(true);
  });

  it('takes what a folder holds to a folder, also where it is one file', () => {
    mkdirSync(at('in'));
    expect(targets([at('in/a.xlsx')], at('out'), [at('in')])).toEqual([at('out/a.xlsx')]);
    expect(statSync(at('out')).isDirectory()).toBe(true);
    expect(targets([at('in/a.xlsx')], at('b.xlsx'), [at('in')])).toEqual([at('b.xlsx')]);
  });

  it('makes no folder under the name of a file', () => {
    expect(() => targets(['a.xlsx', 'b.xlsx'], at('fresh.xlsx'))).toThrow(/is a file; give a folder for 2 files$/);
    expect(existsSync(at('fresh.xlsx'))).toBe(false);
    writeFileSync(at('plain'), 'mine');
    expect(() => targets(['a.xlsx', 'b.xlsx'], at('plain'))).toThrow(/is a file; give a folder for 2 files$/);
  });

  it('refuses a name of another kind than the original', () => {
    expect(() => targets(['a.xlsx'], 'b.ods')).toThrow(
      'b.ods: the copy is of the same kind as a.xlsx; give it a name that ends in .xlsx',
    );
    expect(() => targets(['a.xlsm'], 'b.xlsx')).toThrow(/ends in \.xlsm$/);
    expect(targets(['saved'], 'b.ods')).toEqual(['b.ods']);
    expect(targets(['a.xlsx'], 'copy')).toEqual(['copy']);
  });

  it('refuses two files of one name, and names both', () => {
    expect(() => targets(['one/a.xlsx', 'two/A.xlsx'], at('out'))).toThrow(
      'one/a.xlsx and two/A.xlsx have the same name; run them separately',
    );
    expect(existsSync(at('out'))).toBe(false);
  });

  it('refuses no name, and a folder that cannot be created', () => {
    expect(() => targets(['a.xlsx'], ' ')).toThrow('--out is empty; give the name of the copy');
    writeFileSync(at('plain'), 'mine');
    expect(() => targets(['a.xlsx', 'b.xlsx'], at('plain/out'))).toThrow(
      /cannot be created: a part of the path is a file/,
    );
  });
});
