import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import ExcelJS from 'exceljs';
import { program } from '../../../src/app/cli/program.js';
import type { Terminal } from '../../../src/app/cli/terminal.js';

jest.setTimeout(60_000);

const dist = resolve('dist');
let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'lazaret-cli-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** A command in this process, with the folder of the test as its own. */
const lazaret = (...args: readonly string[]): Promise<Ended> => lazaretOn(undefined, args);

async function lazaretOn(columns: number | undefined, args: readonly string[]): Promise<Ended> {
  let [out, err] = ['', ''];
  const terminal: Terminal = {
    out: (text) => (out += `${text}\n`),
    err: (text) => (err += `${text}\n`),
    columns,
    progress: () => ({ step: () => undefined, end: () => undefined }),
  };
  const home = process.cwd();
  process.chdir(folder);
  try {
    return { code: await program(args, { terminal, dist }), out, err };
  } finally {
    process.chdir(home);
  }
}

/** The same command as the file that people run. */
function builtLazaret(...args: readonly string[]): Ended {
  const script = join(dist, 'lazaret.js');
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], { encoding: 'utf8', cwd: folder });
  return { code: status, out: stdout, err: stderr };
}

const hash = (file: string) => createHash('sha256').update(readFileSync(file)).digest('hex');

/** A keeper's workbook: a log with a dip in it, a card, and formulas of ours with values of long ago. */
async function workbook(
  name: string,
  readings: readonly (number | string)[] = [2.1, 2.2, 1.8, 2.0, 2.1],
): Promise<string> {
  const book = new ExcelJS.Workbook();
  const log = book.addWorksheet('Log');
  log.addRow(['Date', 'Copper mg/L', 'Notes']);
  readings.forEach((reading, day) => log.addRow([new Date(Date.UTC(2026, 2, 1 + day, 8)), reading, '']));
  log.getColumn(1).numFmt = 'yyyy-mm-dd hh:mm';
  const card = book.addWorksheet('Card');
  card.addRows([
    ['Volume', 200],
    ['Form', 'chelated'],
    ['Strength', '10 mg/mL'],
    ['Days', 14],
  ]);
  const answers = book.addWorksheet('Answers');
  answers.getCell('A1').value = {
    formula: `_xldudf_QT_HOLDDAYS(Log!A2:A${readings.length + 1},Log!B2:B${readings.length + 1},"chelated")`,
    result: 99,
  };
  answers.getCell('A2').value = { formula: 'A1*2', result: 198 };
  answers.getCell('A3').value = { formula: 'QT.BAND("chelated")', result: 1.95 };
  const path = join(folder, name);
  await book.xlsx.writeFile(path);
  return path;
}

describe('lazaret calc', () => {
  it('prints one answer, and a table with a tab between cells', async () => {
    expect(builtLazaret('calc', '=QT.HOLDDAYS({46082;46083;46084},{2.1;2.2;2.15},"chelated")')).toEqual({
      code: 0,
      out: '2\n',
      err: '',
    });
    expect((await lazaret('calc', 'QT.BAND("chelated")')).out).toBe('1.95\t2.55\n');
    expect((await lazaret('calc', '=QT.THIN(10,1,500)')).out).toBe('Stock mL\tWater mL\n50\t450\n');
  });

  it('computes with the answer, as a cell would', async () => {
    expect((await lazaret('calc', '=IF(QT.RISE(200,10,4)>0.1,"much",ROUND(1.25,1))')).out).toBe('much\n');
  });

  it('prints JSON where asked', async () => {
    expect(JSON.parse((await lazaret('calc', '--json', '=QT.THIN(10,1,500)')).out)).toEqual([
      ['Stock mL', 'Water mL'],
      [50, 450],
    ]);
  });

  it('says on the error stream why there is no answer, and ends with 2', async () => {
    const { code, out, err } = await lazaret('calc', '=QT.DOSE(168,2.5,2.25,4,"chelated")');
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/#VALUE! wanted 2\.25 is below the level 2\.5; lowering takes a water change/);
    expect((await lazaret('calc', '=QT.HOLDDAYS({46082},{""},"chelated")')).err).toMatch(/#N\/A /);
    expect((await lazaret('calc', '=QT.NOSUCH(1)')).code).toBe(2);
    expect((await lazaret('calc', '=QT.DOSE(168,')).code).toBe(2);
    expect((await lazaret('calc', '=QT.RISE(A1,10,4)')).err).toMatch(/there is no sheet/);
  });
});

describe('lazaret', () => {
  it('shows its use with the cautions, and refuses what it does not know', async () => {
    const { code, out } = await lazaret('--help');
    expect(code).toBe(0);
    expect(out).toMatch(/Copper is a poison/);
    for (const command of ['calc', 'recalc', 'audit', 'template', 'functions', 'limits'])
      expect(out).toContain(command);
    expect((await lazaret()).code).toBe(2);
    expect((await lazaret('cure')).code).toBe(2);
    expect((await lazaret('calc')).err).toMatch(/missing required argument 'formula'/);
    expect((await lazaret('recalc', 'a.xlsx')).code).toBe(2);
    expect((await lazaret('audit', 'a.xlsx', '--as-of', 'yesterday')).err).toMatch(
      /--as-of is "yesterday"; write a date/,
    );
  });
});

describe('lazaret functions', () => {
  it('lists every function with its arguments and an example', async () => {
    const { code, out } = await lazaret('functions');
    expect(code).toBe(0);
    const { functions } = JSON.parse(readFileSync(resolve('dist/functions.json'), 'utf8'));
    for (const { id } of functions) expect(out).toContain(`QT.${id}(`);
    expect((await lazaret('functions', 'holddays')).out).toMatch(
      /^THE HOLD\n\nQT\.HOLDDAYS\(when, copper, band, \[asOf\]/,
    );
    expect(await lazaret('functions', 'QT.NONE')).toMatchObject({ code: 2, out: '' });
  });

  it('lists the limits with unit, status and source', async () => {
    const { code, out } = await lazaret('limits');
    expect(code).toBe(0);
    expect(out).toMatch(/^Of +Limit +Value +Unit +Decides +Status +Source\n/);
    expect(out).toMatch(/\nmove +transfer gap +48 +h +.* practice +common practice/);
    expect(out).toMatch(/\nwater +salinity danger +20 +g\/kg +.* memory +from memory/);
  });
});

describe('lazaret recalc', () => {
  it('writes a copy with fresh values, says what changed, and leaves the file that was read alone', async () => {
    const input = await workbook('tank.xlsx');
    const before = hash(input);
    const { code, out } = builtLazaret('recalc', 'tank.xlsx', '--out', 'fresh.xlsx');
    expect(code).toBe(0);
    expect(out).toMatch(/Answers!A1: 99 -> 1 /);
    expect(out).toMatch(/2 QT formulas, 1 cell changed/);
    expect(hash(input)).toBe(before);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(join(folder, 'fresh.xlsx'));
    const cell = (address: string) => book.getWorksheet('Answers')?.getCell(address).value;
    expect(cell('A1')).toMatchObject({ formula: '_xldudf_QT_HOLDDAYS(Log!A2:A6,Log!B2:B6,"chelated")', result: 1 });
    expect(cell('A2')).toEqual({ formula: 'A1*2', result: 198 });
    expect(readdirSync(folder).sort()).toEqual(['fresh.xlsx', 'tank.xlsx']);
  });

  it('never writes over its input, nor over another file unless told so', async () => {
    const input = await workbook('tank.xlsx');
    const before = hash(input);
    expect((await lazaret('recalc', 'tank.xlsx', '--out', 'tank.xlsx')).code).toBe(2);
    expect(
      (await lazaret('recalc', 'tank.xlsx', '--out', './../' + folder.split('/').at(-1) + '/tank.xlsx', '--replace'))
        .code,
    ).toBe(2);
    expect(hash(input)).toBe(before);
    writeFileSync(join(folder, 'other.xlsx'), 'mine');
    expect((await lazaret('recalc', 'tank.xlsx', '--out', 'other.xlsx')).err).toMatch(/already exists/);
    expect(readFileSync(join(folder, 'other.xlsx'), 'utf8')).toBe('mine');
    expect((await lazaret('recalc', 'tank.xlsx', '--out', 'other.xlsx', '--replace')).code).toBe(0);
  });

  it('takes a folder to a folder', async () => {
    mkdirSync(join(folder, 'in'));
    await workbook('in/a.xlsx');
    await workbook('in/b.xlsx');
    expect((await lazaret('recalc', 'in', '--out', 'out')).code).toBe(0);
    expect(readdirSync(join(folder, 'out'))).toEqual(['a.xlsx', 'b.xlsx']);
  });

  it('passes over the csv files of a folder, which store no formulas', async () => {
    mkdirSync(join(folder, 'in'));
    await workbook('in/a.xlsx');
    writeFileSync(join(folder, 'in/a.csv'), 'When,Copper\n2026-03-01,2.1\n');
    expect(await lazaret('recalc', 'in', '--out', 'out')).toMatchObject({ code: 0, err: '' });
    expect(readdirSync(join(folder, 'out'))).toEqual(['a.xlsx']);
    expect((await lazaret('recalc', 'in/a.csv', '--out', 'b.csv')).err).toMatch(/a csv file stores no formulas/);
  });

  it('names what it cannot read as what it is', async () => {
    writeFileSync(join(folder, 'text.xlsx'), 'hello');
    expect((await lazaret('recalc', 'text.xlsx', '--out', 'b.xlsx')).err).toMatch(
      /plain text and no workbook, whatever its name/,
    );
  });
});

describe('lazaret audit', () => {
  it('finds log and card, tells the verdict, and ends with 0 where there is no danger', async () => {
    await workbook(
      'tank.xlsx',
      Array.from({ length: 20 }, () => 2.25),
    );
    const { code, out } = await lazaret('audit', 'tank.xlsx');
    expect(out).toMatch(/^tank\.xlsx, Log!A1:C21 · card Card!A1:B4\n {2}verdict/);
    expect(code).toBe(0);
  });

  it('ends with 1 where there is danger, and names the row of the sheet', async () => {
    await workbook('tank.xlsx', [2.25, 2.25, 1.2, 2.25]);
    const { code, out } = await lazaret('audit', 'tank.xlsx');
    expect(code).toBe(1);
    expect(out).toMatch(/danger +row 4, 2026-03-03 08:00: /);
  });

  it('breaks its lines between words where the terminal is narrow, and keeps every word', async () => {
    await workbook('tank.xlsx', [2.25, 2.25, 1.2, 2.25]);
    const narrow = (await lazaretOn(48, ['audit', 'tank.xlsx'])).out;
    const wide = (await lazaretOn(400, ['audit', 'tank.xlsx'])).out;
    const words = (text: string): string[] => text.split(/\s+/);
    expect(words(narrow)).toEqual(words(wide));
    const [, ...lines] = narrow.split('\n');
    expect(lines.length).toBeGreaterThan(wide.split('\n').length);
    expect(lines.filter((line) => line.length > 48 && words(line.trim()).length > 1)).toEqual([]);
  });

  it('gives JSON with the same findings', async () => {
    await workbook('tank.xlsx', [2.25, 2.25, 1.2, 2.25]);
    const { code, out } = await lazaret('audit', 'tank.xlsx', '--json');
    expect(code).toBe(1);
    const { audits } = JSON.parse(out);
    expect(audits).toHaveLength(1);
    expect(audits[0]).toMatchObject({ file: 'tank.xlsx', sheet: 'Log', range: 'A1:C5', system: null });
    expect(audits[0].findings[0].severity).toBe('verdict');
    expect(audits[0].findings).toContainEqual(expect.objectContaining({ severity: 'danger', row: 4 }));
    expect(audits[0].holds[0]).toMatchObject({ from: '2026-03-01 08:00', endedBy: 'below', row: 4 });
  });

  it('writes a report of its own, and does not name another file twice', async () => {
    await workbook('tank.xlsx');
    expect(await lazaret('audit', 'tank.xlsx', '--html', 'report.html')).toMatchObject({ code: 1, err: '' });
    expect(readFileSync(join(folder, 'report.html'), 'utf8')).toMatch(/^<!doctype html>/i);
    expect((await lazaret('audit', 'tank.xlsx', '--html', 'tank.xlsx')).code).toBe(2);
  });

  it('goes on past a file that cannot be read, names it, and ends with 2', async () => {
    await workbook(
      'a.xlsx',
      Array.from({ length: 20 }, () => 2.25),
    );
    writeFileSync(join(folder, 'b.xlsx'), 'no workbook');
    writeFileSync(join(folder, 'c.csv'), 'Date,Copper\n2026-03-01,2.1\n');
    const { code, out, err } = await lazaret('audit', '.');
    expect(code).toBe(2);
    expect(out).toMatch(/a\.xlsx, Log!A1:C21/);
    expect(err).toMatch(/b\.xlsx: /);
    expect(err).toMatch(/c\.csv: .*card/);
  });

  it('reads a csv with its card above the log and says how it was read', async () => {
    const rows = Array.from({ length: 16 }, (_, day) => `${String(day + 1).padStart(2, '0')}.03.2026 08:00;2,2`);
    writeFileSync(
      join(folder, 'log.csv'),
      `Volume;200\nForm;chelated\n\nDatum;Kupfer\n`.replace('Datum;Kupfer', 'Date;Copper') + rows.join('\n'),
    );
    const { code, out, err } = await lazaret('audit', 'log.csv');
    expect(code).toBe(0);
    expect(out).toMatch(/verdict/);
    expect(err).toMatch(/semicolon/);
    expect(err).toMatch(/decimal comma|comma as/i);
    expect(err).toMatch(/day first|day before month/i);
  });
});

describe('lazaret template', () => {
  it.each(['tank', 'shop'])('writes a workbook of kind %s that audits and needs no recalculation', async (kind) => {
    expect((await lazaret('template', kind, '--out', 'new.xlsx')).code).toBe(0);
    expect((await lazaret('audit', 'new.xlsx')).code).not.toBe(2);
    const { code, out } = await lazaret('recalc', 'new.xlsx', '--out', 'same.xlsx');
    expect(code).toBe(0);
    expect(out).toMatch(/nothing changed/);
    expect(hash(join(folder, 'same.xlsx'))).toBe(hash(join(folder, 'new.xlsx')));
  });

  it('refuses a kind it does not know, a file that is there, another ending', async () => {
    expect((await lazaret('template', 'pond', '--out', 'a.xlsx')).err).toMatch(/no template "pond"; write tank/);
    writeFileSync(join(folder, 'a.xlsx'), 'mine');
    expect((await lazaret('template', 'tank', '--out', 'a.xlsx')).code).toBe(2);
    expect((await lazaret('template', 'tank', '--out', 'a.ods')).code).toBe(2);
  });
});

describe('lazaret on hostile words and full disks', () => {
  it('lets nothing that was typed, and no file name, command the terminal', async () => {
    for (const args of [
      ['audit', 'a\u001b[2J.csv'],
      ['functions', 'a\u001b[2J'],
      ['a\u001b[2J'],
      ['audit', '--as-of', 'a\u001b[2J', 'x.csv'],
    ]) {
      const { code, err } = await lazaret(...args);
      expect(code).toBe(2);
      expect(err).toContain('a\ufffd[2J');
      expect(err).not.toContain('\u001b');
    }
  });

  it('audits what is there and refuses what is not, in JSON too', async () => {
    await workbook('log.xlsx');
    const { code, out } = await lazaret('audit', '--json', 'none.xlsx', 'log.xlsx');
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject({
      audits: [{ file: 'log.xlsx' }],
      refused: [{ file: 'none.xlsx', message: 'none.xlsx: there is no such file or folder' }],
    });
  });

  it('writes out in JSON what a terminal would obey', async () => {
    const rows = 'Volume,200\nForm,chelated\n\nDate,Copper,Notes\n2026-03-01,2.1,gasping \u202e x\n';
    writeFileSync(join(folder, 'log.csv'), rows);
    const { out } = await lazaret('audit', '--json', 'log.csv');
    expect(out).not.toContain('\u202e');
    expect(JSON.stringify(JSON.parse(out))).toContain('gasping \u202e x');
  });

  it('ends with a sentence and not as if a danger were found, where the answer cannot be written', async () => {
    if (!existsSync('/dev/full')) return;
    await workbook('log.xlsx');
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', '"$0" "$1" audit log.xlsx > /dev/full', process.execPath, join(dist, 'lazaret.js')],
      {
        encoding: 'utf8',
        cwd: folder,
      },
    );
    expect(status).toBe(2);
    expect(stderr).toBe('lazaret: the answer cannot be written: the disk is full\n');
  });

  it('says that a hidden sheet with a log was left out', async () => {
    const book = new ExcelJS.Workbook();
    for (const name of ['Log', 'Old']) {
      const sheet = book.addWorksheet(name, { state: name === 'Old' ? 'hidden' : 'visible' });
      sheet.addRows([
        ['Volume', 200],
        ['Form', 'chelated'],
        [],
        ['Date', 'Copper'],
        [new Date(Date.UTC(2026, 2, 1)), 2.1],
      ]);
    }
    await book.xlsx.writeFile(join(folder, 'two.xlsx'));
    expect((await lazaret('audit', 'two.xlsx')).err).toBe(
      'lazaret: two.xlsx: The hidden sheet "Old" also has a log, which was left out; --sheet audits it.\n',
    );
    expect((await lazaret('audit', 'two.xlsx', '--sheet', 'Old')).err).toBe('');
  });
});
