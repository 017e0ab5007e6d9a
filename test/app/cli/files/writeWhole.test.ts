import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeWhole } from '../../../../src/app/cli/files/writeWhole.js';
import { FileProblem } from '../../../../src/sheet/zip/fileProblem.js';

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'lazaret-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const terms = (inputs: readonly string[] = [], replace = false) => ({ inputs, replace });

describe('writeWhole', () => {
  it('writes text and bytes, and leaves nothing beside them', () => {
    writeWhole(join(folder, 'a.html'), 'µg', terms());
    writeWhole(join(folder, 'b.xlsx'), new Uint8Array([1, 2, 3]), terms());
    expect(readFileSync(join(folder, 'a.html'), 'utf8')).toBe('µg');
    expect([...readFileSync(join(folder, 'b.xlsx'))]).toEqual([1, 2, 3]);
    expect(readdirSync(folder).sort()).toEqual(['a.html', 'b.xlsx']);
  });

  it('never overwrites an input file, by whatever path it is named', () => {
    const input = join(folder, 'log.xlsx');
    writeFileSync(input, 'rows');
    symlinkSync(input, join(folder, 'soft.xlsx'));
    linkSync(input, join(folder, 'hard.xlsx'));
    mkdirSync(join(folder, 'sub'));
    for (const target of ['log.xlsx', 'soft.xlsx', 'hard.xlsx', 'sub/../log.xlsx']) {
      expect(() => writeWhole(`${folder}/${target}`, 'other', terms([input], true))).toThrow(
        /is an input file, which is never overwritten; give another name/,
      );
    }
    expect(readFileSync(input, 'utf8')).toBe('rows');
  });

  it('overwrites another file only when told to; an empty one has nothing to lose', () => {
    const target = join(folder, 'report.html');
    writeFileSync(target, 'old');
    expect(() => writeWhole(target, 'new', terms())).toThrow(/already exists; give another name, or --replace/);
    expect(readFileSync(target, 'utf8')).toBe('old');
    writeWhole(target, 'new', terms([], true));
    expect(readFileSync(target, 'utf8')).toBe('new');
    writeFileSync(target, '');
    writeWhole(target, 'newer', terms());
    expect(readFileSync(target, 'utf8')).toBe('newer');
  });

  it('leaves a read-only file alone, even when told to overwrite it', () => {
    const target = join(folder, 'kept.html');
    writeFileSync(target, 'old', { mode: 0o444 });
    expect(() => writeWhole(target, 'new', terms([], true))).toThrow(/kept\.html is read-only; give another name/);
    expect(readFileSync(target, 'utf8')).toBe('old');
  });

  it('says why a target cannot be written', () => {
    const file = join(folder, 'file');
    writeFileSync(file, 'x');
    expect(() => writeWhole(join(folder, 'none', 'a'), 'x', terms())).toThrow(/no such file or folder/);
    expect(() => writeWhole(folder, 'x', terms())).toThrow(/is a folder; give the name of a file/);
    expect(() => writeWhole(join(file, 'a'), 'x', terms())).toThrow(FileProblem);
    expect(() => writeWhole(join(folder, 'n'.repeat(300)), 'x', terms())).toThrow(/the name is too long/);
    expect(readdirSync(folder)).toEqual(['file']);
  });

  it('says that it may not write to a folder', () => {
    writeFileSync(join(folder, 'old.html'), 'old');
    chmodSync(folder, 0o555);
    const isRoot = process.geteuid?.() === 0;
    // Root may write everywhere: somebody else tries.
    if (isRoot) process.seteuid?.(65_534);
    try {
      expect(() => writeWhole(join(folder, 'a.html'), 'x', terms())).toThrow(
        /cannot be written: no permission; nothing/,
      );
      expect(() => writeWhole(join(folder, 'old.html'), 'x', terms([], true))).toThrow(/no permission/);
    } finally {
      if (isRoot) process.seteuid?.(0);
      chmodSync(folder, 0o755);
    }
    expect(readdirSync(folder)).toEqual(['old.html']);
    expect(readFileSync(join(folder, 'old.html'), 'utf8')).toBe('old');
  });

  it('leaves devices and pipes alone', () => {
    expect(() => writeWhole('/dev/null', 'x', terms([], true))).toThrow(/is not an ordinary file/);
  });

  it('leaves the old file whole and no part of the new one where the disk gives no more room', () => {
    const target = join(folder, 'report.html');
    writeFileSync(target, 'old');
    // A limit on the size of files stands for a full disk: the system refuses in the middle of the bytes.
    const script = `
      require(${JSON.stringify(join(process.cwd(), 'test/app/cli/files/runTypescript.cjs'))});
      const { writeWhole } = require(${JSON.stringify(join(process.cwd(), 'src/app/cli/files/writeWhole.ts'))});
      try { writeWhole(${JSON.stringify(target)}, new Uint8Array(5_000_000), { inputs: [], replace: true }); }
      catch (fault) { console.log(fault.name + ': ' + fault.message); }`;
    const run = spawnSync('bash', ['-c', `ulimit -f 1000; exec "${process.execPath}" -e "$0"`, script], {
      encoding: 'utf8',
    });
    expect(run.stdout).toMatch(
      /^FileProblem: .*cannot be written: the file is larger than is allowed here; nothing was changed/,
    );
    expect(readFileSync(target, 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['report.html']);
  });
});
