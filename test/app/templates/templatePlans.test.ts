import { readFileSync } from 'node:fs';
import { addressOf } from '../../../src/sheet/address/addressOf.js';
import { cellRange, isInside, type CellRange } from '../../../src/sheet/address/cellRange.js';
import type { FunctionCatalogue } from '../../../src/app/calls/functionCatalogue.js';
import { nodeBundle } from '../../../src/app/cli/files/nodeBundle.js';
import { callFunction } from '../../../src/app/calls/callFunction.js';
import type { CellValue } from '../../../src/sheet/cell/cellValue.js';
import { callsOutside } from '../../../src/sheet/formula/functionName.js';
import { qtNames } from '../../../src/app/calls/outsideFunctions.js';
import { formulaAsStored } from '../../../src/sheet/formula/formulaAsStored.js';
import { formulaAsTyped } from '../../../src/sheet/formula/formulaAsTyped.js';
import { plainReferences } from '../../../src/sheet/formula/plainReferences.js';
import { logColumns } from '../../../src/app/templates/sheets/logColumns.js';
import { cardEntries } from '../../../src/app/templates/sheets/cardEntries.js';
import { shopHeadings, shopLogRows } from '../../../src/app/templates/shop/shopLogRows.js';
import { cardColumns } from '../../../src/app/templates/shop/shopCards.js';
import { tankHeadings, tankLogRows } from '../../../src/app/templates/tank/tankLogRows.js';
import { planBook } from '../../../src/app/templates/plan/planBook.js';
import type { SheetPlan, TemplatePlan } from '../../../src/app/templates/plan/templatePlan.js';
import { templatePlans } from '../../../src/app/templates/write/templateBytes.js';
import { argumentCount, isFormula, named, placed, type Placed } from './plannedCells.js';

const catalogue = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as FunctionCatalogue;
const bundle = nodeBundle('dist').functions;

/** The cells a formula reads, tables and names written out. */
function references(cell: Placed, plan: TemplatePlan): (CellRange & { readonly sheet: string })[] {
  const names = plan.names.map(({ name, cells }) => ({ name, formula: cells }));
  const plain = plainReferences(String(cell.content).slice(1), { ...cell, tables: planBook(plan).tables, names });
  const bare = plain.replace(/"[^"]*"/g, '');
  const reference = /(?:(?:'([^']+)'|(\w+))!)?\$?([A-Z]{1,2})\$?(\d+)(?::\$?([A-Z]{1,2})\$?(\d+))?(?![\w(])/g;
  return [...bare.matchAll(reference)].map((match) => {
    const [, quoted, other, column = '', row = '', lastColumn = column, lastRow = row] = match;
    return { sheet: quoted ?? other ?? cell.sheet, ...cellRange(`${column}${row}:${lastColumn}${lastRow}`) };
  });
}

/** The call of ours in a formula: its id, and the text between its brackets. */
function ourCall(formula: string): { readonly id: string; readonly list: string } {
  const start = formula.indexOf('QT.');
  const open = formula.indexOf('(', start);
  let depth = 0;
  let end = open;
  do {
    const letter = formula[end++];
    if (letter === '(') depth++;
    if (letter === ')') depth--;
  } while (depth > 0);
  return { id: formula.slice(start + 3, open), list: formula.slice(open + 1, end - 1) };
}

const asked = (id: string, ...given: (readonly (readonly CellValue[])[])[]): readonly (readonly CellValue[])[] => {
  const found = bundle.find(({ entry }) => entry.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  const answer = callFunction({ ...found, given, address: 'Log!A1' });
  if (answer.kind !== 'table') throw new Error(JSON.stringify(answer));
  return answer.rows;
};

const { tank, shop, demo } = templatePlans;

describe.each(Object.entries({ tank, shop }))('the plan of the template %s', (_kind, plan) => {
  const all = plan.sheets.flatMap(placed);
  const formulas = all.filter(isFormula);
  const ours = formulas.filter(({ content }) => callsOutside(String(content), qtNames));

  it('has its sheets, and puts no two contents into one cell', () => {
    expect(plan.sheets.length).toBeGreaterThanOrEqual(10);
    expect(new Set(plan.sheets.map(({ name }) => name)).size).toBe(plan.sheets.length);
    expect(new Set(all.map(named)).size).toBe(all.length);
  });

  it('keeps contents inside the columns that have a width', () => {
    const outside = plan.sheets.flatMap((sheet) => placed(sheet).filter(({ column }) => column >= sheet.widths.length));
    expect(outside.map(named)).toEqual([]);
  });

  it('calls functions there are, with as many arguments as they take', () => {
    expect(ours.length).toBeGreaterThanOrEqual(8);
    for (const formula of ours) {
      const { id, list } = ourCall(String(formula.content));
      const entry = catalogue.functions.find((one) => one.id === id);
      const needed = entry?.parameters.filter(({ optional }) => optional !== true).length ?? NaN;
      const given = argumentCount(list);
      const fits = given >= needed && given <= (entry?.parameters.length ?? 0);
      expect([named(formula), id, fits]).toEqual([named(formula), id, true]);
    }
  });

  it('has formulas that go into the stored form and back', () => {
    for (const { content } of formulas) {
      const typed = String(content).slice(1);
      expect(formulaAsTyped(formulaAsStored(typed, qtNames), qtNames)).toBe(typed);
    }
    expect(formulaAsStored('LET(a,QT.BAND(A1),IFNA(a,0))', qtNames)).toBe(
      '_xlfn.LET(_xlpm.a,_xldudf_QT_BAND(A1),_xlfn.IFNA(_xlpm.a,0))',
    );
  });

  it('never feeds one of our functions to another, and spills into no cell that holds something', () => {
    for (const formula of ours) {
      const typed = String(formula.content);
      expect([named(formula), typed.match(/QT\./g)?.length]).toEqual([named(formula), 1]);
      const fed = references(formula, plan).flatMap((range) =>
        ours.filter((other) => other.sheet === range.sheet && isInside(range, other.row, other.column)).map(named),
      );
      expect([named(formula), fed]).toEqual([named(formula), []]);
      const isTable = typed.startsWith('=QT.') && !typed.startsWith('=QT.BAND');
      const below = all.filter(
        ({ sheet, row, column }) =>
          isTable && sheet === formula.sheet && column === formula.column && row > formula.row,
      );
      expect([named(formula), below.map(named)]).toEqual([named(formula), []]);
    }
  });

  it('uses no spill operator, which the embedded sheet lacks, and no table that is not there', () => {
    for (const formula of formulas) {
      expect(String(formula.content)).not.toMatch(/[A-Z]\d+#/);
      const names = plan.names.map(({ name, cells }) => ({ name, formula: cells }));
      const place = { ...formula, tables: planBook(plan).tables, names };
      expect(plainReferences(String(formula.content).slice(1), place)).not.toMatch(/#REF!|\[/);
    }
  });

  it('says what every cell for writing takes, in texts that a spreadsheet shows whole', () => {
    for (const sheet of plan.sheets) {
      const inputs = sheet.areas.filter(({ look }) => look === 'input' || look === 'inputNumber');
      const ruled = sheet.validations.map(({ range }) => range);
      const cells = [...inputs.map(({ range }) => range), ...(sheet.name === 'Log' ? [bodyOf(sheet)] : [])];
      for (const range of cells) {
        for (let row = range.firstRow; row <= range.lastRow; row++) {
          for (let column = range.firstColumn; column <= range.lastColumn; column++) {
            const rules = ruled.filter((one) => isInside(one, row, column)).length;
            expect([sheet.name, addressOf(row, column), rules]).toEqual([sheet.name, addressOf(row, column), 1]);
          }
        }
      }
      for (const { title, prompt, refusal, allows } of sheet.validations) {
        expect(title.length).toBeLessThanOrEqual(32);
        expect(prompt.length).toBeGreaterThan(10);
        expect(prompt.length).toBeLessThanOrEqual(255);
        expect(refusal.length).toBeLessThanOrEqual(225);
        if (allows.kind !== 'anything') expect(refusal).toMatch(/^(?:Write|Choose|A level) .+\.$/);
        if (allows.kind === 'list') expect(allows.values.join(',').length).toBeLessThanOrEqual(255);
      }
    }
  });

  it('claims no level, fish or tank to be what nobody can promise', () => {
    const said = [...all.map(({ content }) => String(content)), plan.title, plan.description, plan.subject];
    expect(said.filter((text) => /\b(?:safe|safely|safety|cured?|clean|harmless)\b/i.test(text))).toEqual([]);
    expect(all.some(({ content }) => /aquatic veterinarian decides/.test(String(content)))).toBe(true);
  });

  it('prints every sheet with its name, keeps headings in view, and leads from the first sheet to all others', () => {
    const [start, ...others] = plan.sheets;
    expect(start?.links.map(({ to }) => to)).toEqual(others.map(({ name }) => name));
    const long = others.filter(({ page }) => page.repeated !== undefined);
    expect(long.length).toBeGreaterThanOrEqual(6);
    for (const { name, page, frozen } of long)
      expect([name, frozen?.rows]).toEqual([name, (page.repeated?.last ?? NaN) + 1]);
    for (const { name } of plan.sheets) expect(name.length).toBeLessThanOrEqual(31);
  });

  it('draws charts with axis titles and a text alternative', () => {
    const charts = plan.sheets.flatMap((sheet) => sheet.charts);
    expect(charts.length).toBeGreaterThanOrEqual(1);
    for (const { across, up, alt, series } of charts) {
      expect(across.title.length * up.title.length).toBeGreaterThan(0);
      expect(alt.length).toBeGreaterThan(80);
      expect(series.length).toBeGreaterThanOrEqual(1);
    }
  });
});

function bodyOf({ name, table }: SheetPlan): CellRange {
  if (table === undefined) throw new Error(`${name} has no table`);
  return { ...table.range, firstRow: table.range.firstRow + 1 };
}

describe('the headings of the logs', () => {
  it.each([
    ['tank', tankHeadings, tankLogRows],
    ['shop', shopHeadings, shopLogRows],
  ] as const)('of the template %s are understood, each as something else', (_kind, headings, rows) => {
    const read = asked('HEADINGS', [[...headings], ...rows]).slice(1);
    expect(read.map(([heading]) => heading)).toEqual([...headings]);
    const kinds = read.map(([, kind]) => kind);
    expect(kinds).not.toContain('unknown');
    expect(new Set(kinds).size).toBe(headings.length);
    for (const [heading, , unit] of read) {
      const last = String(heading).split(' ').at(-1) ?? '';
      if (/^(?:mg\/L|L|mL|g\/kg|°C)$/.test(last)) expect([heading, unit]).toEqual([heading, last]);
    }
  });

  it('are all described', () => {
    for (const heading of [...tankHeadings, ...shopHeadings]) expect(logColumns[heading].takes.prompt).not.toBe('');
  });
});

describe('the cards', () => {
  it('have names that are understood, each as something else', () => {
    for (const names of [cardEntries.map(({ name }) => name), cardColumns.map(({ heading }) => heading)]) {
      const read = asked('CARD', [['Volume', 100], ['Form', 'chelated'], ...names.map((name) => [name, ''])]).slice(3);
      expect(read.map(([name]) => name)).toEqual(names);
      const kinds = read.map((row) => row[3]);
      expect(kinds).not.toContain('unknown');
      expect(new Set(kinds).size).toBe(names.length);
    }
  });
});

describe('the example rows', () => {
  it('are marked as such, every one', () => {
    expect(tankLogRows.length).toBeGreaterThanOrEqual(20);
    expect(shopLogRows.length).toBeGreaterThanOrEqual(60);
    for (const [row, headings] of [
      ...tankLogRows.map((each) => [each, tankHeadings] as const),
      ...shopLogRows.map((each) => [each, shopHeadings] as const),
    ]) {
      expect(row.length).toBe(headings.length);
      expect(String(row.at(-1))).toMatch(/^example/);
    }
  });
});

describe('the plan of the demo', () => {
  it('gives every cell with something in it a look, and keeps headings in view and on every page', () => {
    for (const sheet of demo.sheets) {
      const bare = placed(sheet).filter(
        ({ row, column }) => !sheet.areas.some(({ range, look }) => look !== undefined && isInside(range, row, column)),
      );
      expect(bare.map(named)).toEqual([]);
      const rows = sheet.frozen?.rows ?? 0;
      expect(rows).toBeGreaterThan(0);
      expect(sheet.page).toEqual({ orientation: 'landscape', repeated: { first: 0, last: rows - 1 } });
    }
  });

  it('says in what it prints on every page that its data is invented, and names its one refusal', () => {
    expect(demo.title).toMatch(/invented/);
    expect(demo.description).toMatch(/aquatic veterinarian decides/);
    expect(
      demo.sheets
        .flatMap(placed)
        .filter(({ isRefused }) => isRefused === true)
        .map(named),
    ).toEqual(['Log!H9']);
  });

  it('has formulas that go into the stored form and back, so that a copy of it finds them unchanged', () => {
    for (const { content } of demo.sheets.flatMap(placed).filter(isFormula)) {
      const typed = String(content).slice(1);
      expect(formulaAsTyped(formulaAsStored(typed, qtNames), qtNames)).toBe(typed);
    }
  });

  it('stands numbers to the right below headings that do, and texts to the left', () => {
    const lookAt = (name: string, address: string): string | undefined => {
      const { firstRow, firstColumn } = cellRange(address);
      const sheet = demo.sheets.find((each) => each.name === name);
      return sheet?.areas.filter(({ range }) => isInside(range, firstRow, firstColumn)).at(-1)?.look;
    };
    expect(['A2', 'B2', 'E2', 'G13', 'I13', 'H9'].map((address) => lookAt('Log', address))).toEqual([
      'cell',
      'cellNumber',
      'cell',
      'cell',
      'cellNumber',
      'refusal',
    ]);
  });
});
