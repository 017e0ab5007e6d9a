import fc from 'fast-check';
import type { CellValue } from '../../../src/sheet/cell/cellValue';
import type { CellWrite } from '../../../src/sheet/patch/cellWrite';
import { patchOds } from '../../../src/sheet/patch/patchOds';
import { patchXlsx } from '../../../src/sheet/patch/patchXlsx';
import { addressOf } from '../../../src/sheet/address/addressOf';
import { readBook } from '../../../src/sheet/read/readBook';
import { odsContentPart, smallOds } from './smallOds';
import { partIn, sheetPart, smallWorkbook } from './smallWorkbook';

const outside = { has: (name: string) => name.startsWith('QT.') };

const rows = 7;
const columns = 6;
const strings = ['shared', ' two  words ', 'a & b'];

/** A value as the reader gives it, and XML that stands for it. */
interface Written {
  readonly value: CellValue;
  readonly type: string;
  readonly inner: string;
}

const letters = fc.string({
  unit: fc.constantFrom(
    'a',
    'é',
    '\u{1f41f}',
    ' ',
    '<',
    '&',
    '"',
    "'",
    '_',
    'x',
    '0',
    '_x0041_',
    '\n',
    '\t',
    '\r',
    '\u0001',
    '\ud800',
    ']]>',
  ),
  maxLength: 12,
});
const value: fc.Arbitrary<CellValue> = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => number + 0),
  fc.integer({ min: -50_000, max: 50_000 }),
  letters,
  fc.boolean(),
  fc.constant(null),
  fc.constantFrom('#N/A', '#VALUE!', '#DIV/0!').map((basicValue): CellValue => ({ type: 'Error', basicValue })),
);
const q = fc.constantFrom('"', "'");

/** One cell in one of the many ways that programs write it. */
const writtenCell: fc.Arbitrary<Written> = fc.oneof(
  fc
    .tuple(
      fc.integer({ min: -9999, max: 9999 }),
      fc.constantFrom(
        '<v>#</v>',
        '<v>#.0</v>',
        '<v >\n#</v>',
        '<v><![CDATA[#]]></v>',
        '<f>A1+1</f><v>#</v>',
        '<f a="x>y"/><v>#</v>',
      ),
    )
    .map(([number, form]): Written => ({ value: number, type: '', inner: form.replace('#', String(number)) })),
  fc
    .integer({ min: 0, max: 2 })
    .map((index): Written => ({ value: strings[index] ?? '', type: 's', inner: `<v>${index}</v>` })),
  fc.constantFrom<Written>(
    { value: 'rich', type: 'inlineStr', inner: '<is><r><t>ri</t></r><r><rPr/><t>ch</t></r></is>' },
    { value: 'f&g', type: 'str', inner: '<f>"f&amp;g"</f><!-- <v>1</v> --><v>f&amp;g</v>' },
    { value: true, type: 'b', inner: '<v>1</v>' },
    { value: { type: 'Error', basicValue: '#N/A' }, type: 'e', inner: '<f>NA()</f><v>#N/A</v>' },
    { value: null, type: '', inner: '' },
  ),
);
const cellSlot = fc.option(fc.tuple(writtenCell, q, fc.boolean(), fc.constantFrom('', ' s="1"', " s='2'")), {
  nil: undefined,
});
const sheetPlan = fc.array(
  fc.option(fc.tuple(fc.array(cellSlot, { maxLength: columns }), fc.boolean()), { nil: undefined }),
  { maxLength: rows },
);
const writesPlan = fc.array(
  fc.record({ sheet: fc.constant('Log'), row: fc.nat(rows + 1), column: fc.nat(columns + 1), value }),
  { maxLength: 12 },
);

type Model = Map<string, CellValue>;

function sheetOf(plan: typeof sheetPlan extends fc.Arbitrary<infer T> ? T : never): {
  xml: string;
  model: Model;
  cells: Map<string, string>;
} {
  const model: Model = new Map();
  const cells = new Map<string, string>();
  let xml = '';
  let expectedRow = 0;
  plan.forEach((slots, row) => {
    if (!slots) return;
    let inner = '';
    let expectedColumn = 0;
    slots[0].forEach((slot, column) => {
      if (!slot) return;
      const [written, quote, stated, style] = slot;
      const address = stated || column !== expectedColumn ? ` r=${quote}${addressOf(row, column)}${quote}` : '';
      const type = written.type === '' ? '' : ` t=${quote}${written.type}${quote}`;
      const cell = written.inner === '' ? `<c${address}${style}/>` : `<c${address}${style}${type}>${written.inner}</c>`;
      inner += cell;
      model.set(addressOf(row, column), written.value);
      cells.set(addressOf(row, column), cell);
      expectedColumn = column + 1;
    });
    xml += `<row${slots[1] || row !== expectedRow ? ` r="${row + 1}"` : ''}>${inner}</row>\n`;
    expectedRow = row + 1;
  });
  return { xml, model, cells };
}

function valuesIn(file: Uint8Array, name: string): Model {
  const model: Model = new Map();
  readBook(file, name).sheets[0]?.rows.forEach((row, index) => {
    row?.forEach((cell, column) => {
      if (cell && cell.value !== null) model.set(addressOf(index, column), cell.value);
    });
  });
  return model;
}

/** What a plain model says the file holds after the writes. */
function after(model: Model, writes: readonly CellWrite[]): Model {
  const expected = new Map(model);
  for (const write of writes) expected.set(addressOf(write.row, write.column), write.value);
  return new Map([...expected].filter(([, held]) => held !== null));
}

function writesOf(model: Model): CellWrite[] {
  return [...model].map(([address, held]) => {
    const [, letter = 'A', number = '1'] = /^([A-Z])(\d+)$/.exec(address) ?? [];
    return { sheet: 'Log', row: Number(number) - 1, column: letter.charCodeAt(0) - 65, value: held };
  });
}

const sorted = (model: Model): [string, CellValue][] => [...model].sort(([one], [other]) => (one < other ? -1 : 1));

describe('random sheets and random writes', () => {
  it('hold afterwards what a plain model says, in xlsx', () => {
    fc.assert(
      fc.property(sheetPlan, writesPlan, (plan, writes) => {
        const { xml, model, cells } = sheetOf(plan);
        const file = smallWorkbook({
          sheet: sheetPart(xml),
          strings: strings.map((text) => `<t xml:space="preserve">${text.replace('&', '&amp;')}</t>`),
        });
        const patched = patchXlsx(file, writes);
        expect(sorted(valuesIn(patched, 'log.xlsx'))).toEqual(sorted(after(model, writes)));
        expect(patchXlsx(patched, writes)).toBe(patched);
        expect(patchXlsx(file, writesOf(model))).toBe(file);
        const written = new Set(writes.map(({ row, column }) => addressOf(row, column)));
        const text = partIn(patched, 'xl/worksheets/sheet1.xml');
        let place = 0;
        for (const [address, cell] of cells) {
          if (written.has(address)) continue;
          place = text.indexOf(cell, place);
          expect({ address, place }).toEqual({ address, place: expect.any(Number) });
          expect(place).toBeGreaterThan(0);
          place += cell.length;
        }
      }),
      { numRuns: 400, seed: 20260301 },
    );
  });

  it('hold afterwards what a plain model says, in ods', () => {
    const odsValue = value.filter(
      (one) => typeof one !== 'string' || !['\u0001', '\ud800', '\r'].some((letter) => one.includes(letter)),
    );
    const cell = fc.tuple(
      fc.constantFrom(
        '/>',
        ' office:value-type="float" office:value="2"><text:p>2</text:p></table:table-cell>',
        ' table:formula="of:=[.A1]" office:value-type="string"><text:p>a &amp; b</text:p><text:p/></table:table-cell>',
        " office:value-type='boolean' office:boolean-value='true'/>",
      ),
      fc.integer({ min: 1, max: 3 }),
    );
    const row = fc.tuple(fc.array(cell, { minLength: 1, maxLength: 4 }), fc.integer({ min: 1, max: 3 }), fc.boolean());
    const writesOfOds = fc.array(
      fc.record({ sheet: fc.constant('Log'), row: fc.nat(14), column: fc.nat(12), value: odsValue }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(fc.array(row, { maxLength: 5 }), writesOfOds, (plan, writes) => {
        const xml = plan.map(([cells, repeated, grouped]) => {
          const inner = cells
            .map(
              ([form, count]) =>
                `<table:table-cell${count === 1 ? '' : ` table:number-columns-repeated="${count}"`}${form}`,
            )
            .join('');
          const text = `<table:table-row${repeated === 1 ? '' : ` table:number-rows-repeated='${repeated}'`}>${inner}</table:table-row>`;
          return grouped ? `<table:table-row-group>${text}</table:table-row-group>` : text;
        });
        const file = smallOds(odsContentPart(xml.join('\n')).replace(' table:default-cell-style-name="day"', ''));
        const model = valuesIn(file, 'log.ods');
        const patched = patchOds(file, writes, outside);
        expect(sorted(valuesIn(patched, 'log.ods'))).toEqual(sorted(after(model, writes)));
        expect(patchOds(patched, writes, outside)).toBe(patched);
        expect(patchOds(file, writesOf(model), outside)).toBe(file);
      }),
      { numRuns: 300, seed: 20260302 },
    );
  });
});
