import { readFileSync } from 'node:fs';
import { addressOf } from '../../../../src/sheet/address/addressOf.js';
import { cellRange, type CellRange } from '../../../../src/sheet/address/cellRange.js';
import { demoPlan } from '../../../../src/app/templates/demo/demoPlan.js';
import { keeperLogRows } from '../../../../src/app/templates/demo/keeperLogRows.js';
import { serialOf } from '../../../../src/app/templates/sheets/rowsOf.js';
import type { FunctionCatalogue } from '../../../../src/app/calls/functionCatalogue.js';
import { argumentCount, isFormula, named, placed, type Placed } from '../plannedCells.js';

const catalogue = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as FunctionCatalogue;

const { sheets } = demoPlan;
const all = sheets.flatMap(placed);
const formulas = all.filter(isFormula);
const ours = formulas.filter(({ content }) => String(content).includes('QT.'));

/** The ranges a formula refers to, each with its sheet. */
function references({ sheet, content }: Placed): (CellRange & { readonly sheet: string })[] {
  const bare = String(content).replace(/"[^"]*"/g, '');
  const reference = /(?:(?:'([^']+)'|(\w+))!)?\$?([A-Z]{1,2})\$?(\d+)(?::\$?([A-Z]{1,2})\$?(\d+))?(?![\w(])/g;
  return [...bare.matchAll(reference)].map((match) => {
    const [, quoted, other, column = '', row = '', lastColumn = column, lastRow = row] = match;
    return { sheet: quoted ?? other ?? sheet, ...cellRange(`${column}${row}:${lastColumn}${lastRow}`) };
  });
}

const inside = (cell: Placed, range: CellRange & { readonly sheet: string }): boolean =>
  cell.sheet === range.sheet &&
  range.firstRow <= cell.row &&
  cell.row <= range.lastRow &&
  range.firstColumn <= cell.column &&
  cell.column <= range.lastColumn;

describe('demoPlan', () => {
  it('has its sheets and puts no two contents into one cell', () => {
    expect(sheets.length).toBeGreaterThanOrEqual(22);
    expect(new Set(all.map(named)).size).toBe(all.length);
  });

  it('keeps contents inside the columns that have a width', () => {
    for (const plan of sheets) {
      const outside = placed(plan).filter(({ column }) => column >= plan.widths.length);
      expect(outside.map(named)).toEqual([]);
    }
  });

  it('calls functions there are, with as many arguments as they take', () => {
    expect(ours.length).toBeGreaterThan(120);
    for (const formula of ours) {
      const [, id = '', list = ''] = /^=QT\.([A-Z]+)\((.*)\)$/.exec(String(formula.content)) ?? [];
      const entry = catalogue.functions.find((one) => one.id === id);
      const given = argumentCount(list);
      const needed = entry?.parameters.filter(({ optional }) => optional !== true).length ?? NaN;
      expect([named(formula), given >= needed && given <= (entry?.parameters.length ?? 0)]).toEqual([
        named(formula),
        true,
      ]);
    }
  });

  it('shows every function', () => {
    const shown = new Set(ours.map(({ content }) => /^=QT\.([A-Z]+)/.exec(String(content))?.[1]));
    const ids = catalogue.functions.map(({ id }) => id);
    expect(ids.length).toBeGreaterThanOrEqual(46);
    expect(ids.filter((id) => !shown.has(id))).toEqual([]);
  });

  it('never feeds one of our functions to another, nor uses what only one program has', () => {
    for (const formula of formulas) {
      const fed = ours.filter((other) => references(formula).some((range) => inside(other, range)));
      expect([named(formula), fed.map(named)]).toEqual([named(formula), []]);
      expect(String(formula.content).match(/QT\./g)?.length ?? 0).toBeLessThanOrEqual(1);
      expect(String(formula.content)).not.toMatch(/#/);
    }
  });
});

describe('references to other sheets', () => {
  it('name sheets there are, and cells inside them', () => {
    const outside = formulas.flatMap((formula) =>
      references(formula).flatMap(({ sheet, lastRow, lastColumn }) => {
        const plan = sheets.find(({ name }) => name === sheet);
        const last = Math.max(...(plan?.areas ?? []).map(({ range }) => range.lastRow));
        const isInside = lastRow <= last && lastColumn < (plan?.widths.length ?? 0);
        return isInside ? [] : [`${named(formula)} to ${sheet}`];
      }),
    );
    expect(outside).toEqual([]);
    expect(formulas.some((formula) => references(formula).some(({ sheet }) => sheet === 'Shop log'))).toBe(true);
  });
});

describe('keeperLogRows', () => {
  const tested = keeperLogRows.filter(([, copper]) => copper !== null);
  const serials = keeperLogRows.map(([when]) => serialOf(when));
  const days = tested.map(([when]) => when.slice(0, 10));

  it('is a log as logs are', () => {
    expect(keeperLogRows.length).toBeGreaterThanOrEqual(43);
    expect(keeperLogRows.length).toBeLessThanOrEqual(48);
    expect(days.length - new Set(days).size).toBeGreaterThanOrEqual(2);
    expect(keeperLogRows.length - tested.length).toBeGreaterThanOrEqual(4);
    const texts = tested.map(([, copper]) => copper).filter((copper) => typeof copper === 'string');
    for (const kind of [/^\d+\.\d+$/, /^~/, /ppm$/, /^</, /-/])
      expect(texts.some((text) => kind.test(text))).toBe(true);
    expect(serials.some((serial, i) => i > 0 && serial < (serials[i - 1] ?? 0))).toBe(true);
  });

  it('has one dip', () => {
    const inTime = [...tested]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([, copper]) => Number.parseFloat(String(copper).replace(/[<~]/, '')));
    const dips = inTime.filter((level, i) => i > 0 && level < 1.95 && (inTime[i - 1] ?? 0) >= 1.95);
    expect(dips).toEqual([1.75]);
  });
});

describe('serialOf', () => {
  it('counts days as spreadsheets do', () => {
    expect(serialOf('1900-03-01 00:00')).toBe(61);
    expect(serialOf('2026-03-01 12:00')).toBe(46082.5);
    expect(() => serialOf('yesterday')).toThrow('yesterday');
  });
});

describe('cellRange and addressOf', () => {
  it('agree', () => {
    for (const address of ['A1', 'Z9', 'AA10', 'AZ52', 'BA1']) {
      const { firstRow, firstColumn } = cellRange(address);
      expect(addressOf(firstRow, firstColumn)).toBe(address);
    }
    expect(cellRange('B2:D9')).toEqual({ firstRow: 1, firstColumn: 1, lastRow: 8, lastColumn: 3 });
    expect(() => cellRange('A0')).toThrow('A0');
  });
});
