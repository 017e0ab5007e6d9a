import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { inputFiles } from '../../../../src/app/cli/files/inputFiles.js';
import { readWhole } from '../../../../src/app/cli/files/readWhole.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lazaret-'));
  mkdirSync(join(folder, 'rack'));
  for (const name of [
    'b.XLSX',
    'a.csv',
    '.hidden.xlsx',
    '~$b.xlsx',
    'photo.png',
    'rack/c.ods',
    'rack/d.xlsm',
    'rack/e.tsv',
  ])
    writeFileSync(join(folder, name), 'x');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('inputFiles', () => {
  it('takes the workbooks of a folder and below, by name, and neither locks nor hidden files', () => {
    expect(inputFiles([folder]).map((path) => relative(folder, path))).toEqual([
      'a.csv',
      'b.XLSX',
      'rack/c.ods',
      'rack/d.xlsm',
      'rack/e.tsv',
    ]);
  });

  it('takes a file that is named whatever its ending, and each once', () => {
    const photo = join(folder, 'photo.png');
    expect(inputFiles([photo, photo, join(folder, 'rack')])).toHaveLength(4);
  });

  it('is not led round by a link to a folder above', () => {
    symlinkSync(folder, join(folder, 'rack', 'up'));
    expect(inputFiles([folder])).toHaveLength(5);
  });

  it('reports what is missing and takes the rest, if asked to', () => {
    const told: string[] = [];
    const missing = join(folder, 'none.xlsx');
    expect(inputFiles([missing, folder], (path, { message }) => told.push(`${path} | ${message}`))).toHaveLength(5);
    expect(told).toEqual([`${missing} | ${missing}: there is no such file or folder`]);
  });

  it('refuses what is not there and a folder without workbooks', () => {
    expect(() => inputFiles([join(folder, 'none.xlsx')])).toThrow(/none\.xlsx: there is no such file or folder/);
    mkdirSync(join(folder, 'empty'));
    expect(() => inputFiles([join(folder, 'empty')])).toThrow(/contains no \.xlsx, \.xlsm, \.ods, \.csv or \.tsv file/);
  });
});

describe('readWhole', () => {
  it('gives the bytes of a file', () => {
    expect([...readWhole(join(folder, 'a.csv'))]).toEqual([120]);
  });

  it('refuses what is not an ordinary file, without waiting for a pipe', () => {
    execFileSync('mkfifo', [join(folder, 'pipe.xlsx')]);
    expect(() => readWhole(join(folder, 'pipe.xlsx'))).toThrow(/is not a file/);
    expect(() => readWhole(folder)).toThrow(/is not a file/);
    expect(() => readWhole(join(folder, 'none'))).toThrow(/cannot be read: there is no such file or folder/);
  });
});
