import { plainReferences } from '../../../src/sheet/formula/plainReferences';
import { cellRange } from '../../../src/sheet/address/cellRange';
import type { BookTable, DefinedName } from '../../../src/sheet/book/book';

const log: BookTable = {
  name: 'Log',
  sheet: 'Log sheet',
  range: cellRange('B3:E9'),
  columns: ['When', 'Copper mg/L', 'Note [keeper]', 'Dose'],
  headings: true,
  totals: true,
};
const bare: BookTable = {
  ...log,
  name: 'Bare',
  range: cellRange('H1:I2'),
  columns: ['a', 'b'],
  headings: false,
  totals: false,
};
const names: DefinedName[] = [
  { name: 'band', formula: '"chelated"' },
  { name: 'log', formula: "'Log sheet'!$B$3:$E$9" },
  { name: 'band', formula: '"amine"', sheet: 'Card' },
  { name: 'beside', formula: 'Card!B1' },
  { name: 'column', formula: 'Card!A$1:A$5' },
  { name: 'grown', formula: "OFFSET('Log sheet'!$B$3,0,0,COUNTA('Log sheet'!$B:$B),4)" },
  { name: 'twice', formula: 'band&band' },
  { name: 'round', formula: 'about' },
  { name: 'about', formula: 'round+1' },
  { name: 'Double', formula: 'LAMBDA(x,x*2)' },
  { name: 'ofTable', formula: 'Log[Dose]' },
  { name: 'local', formula: '1', sheet: 'Card' },
];

function plain(formula: string, sheet = 'Log sheet', row = 4, column = 6): string {
  return plainReferences(formula, {
    sheet,
    row,
    column,
    tables: [log, bare],
    names: names.filter(({ name }) => name !== 'log'),
  });
}

describe('plainReferences', () => {
  it.each([
    ['Log[#All]', '$B$3:$E$9'],
    ['Log[#Data]', '$B$4:$E$8'],
    ['Log', '$B$4:$E$8'],
    ['Log[]', '$B$4:$E$8'],
    ['Log[#Headers]', '$B$3:$E$3'],
    ['Log[#Totals]', '$B$9:$E$9'],
    ['Log[When]', '$B$4:$B$8'],
    ['LOG[copper MG/L]', '$C$4:$C$8'],
    ["Log[Note '[keeper']]", '$D$4:$D$8'],
    ['Log[[Copper mg/L]:[Dose]]', '$C$4:$E$8'],
    ['Log[[#Headers],[#Data],[When]:[Copper mg/L]]', '$B$3:$C$8'],
    ['Log[[#All],[Dose]]', '$E$3:$E$9'],
    ['Log[@Dose]', '$E$5'],
    ['Log[@[Copper mg/L]]', '$C$5'],
    ['Log[[#This Row],[Dose]]', '$E$5'],
    ['Log[@]', '$B$5:$E$5'],
    ['Log[@[When]:[Dose]]', '$B$5:$E$5'],
    ['Bare', '$H$1:$I$2'],
    ['Bare[#Headers]', '#REF!'],
    ['Bare[#Totals]', '#REF!'],
    ['Log[Nothing]', '#REF!'],
    ['Log[#Nothing]', '#REF!'],
    ['Other[When]', '#REF!'],
    ['SUM(Log[Dose])+1', 'SUM($E$4:$E$8)+1'],
  ])('reads %s as %s', (formula, expected) => {
    expect(plain(formula)).toBe(expected);
  });

  it('names the sheet of a table from another sheet', () => {
    expect(plain('QT.AUDIT(Log[#All],A1:B9)', 'Card')).toBe("QT.AUDIT('Log sheet'!$B$3:$E$9,A1:B9)");
  });

  it('takes the table that the cell stands in where none is named', () => {
    expect(plain('[@Dose]', 'Log sheet', 6, 2)).toBe('$E$7');
    expect(plain('[Dose]', 'Log sheet', 6, 2)).toBe('$E$4:$E$8');
    expect(plain('[@Dose]', 'Log sheet', 20, 2)).toBe('#REF!');
  });

  it('gives #VALUE! for this row of a table that the row is not in', () => {
    expect(plain('Log[@Dose]', 'Log sheet', 20)).toBe('#VALUE!');
  });

  it('replaces names by what they stand for, of the sheet first', () => {
    expect(plain('QT.BAND(band)')).toBe('QT.BAND(("chelated"))');
    expect(plain('QT.BAND(BAND)', 'Card')).toBe('QT.BAND(("amine"))');
    expect(plain('QT.BAND(Card!band)')).toBe('QT.BAND(("amine"))');
    expect(plain('local', 'Card')).toBe('(1)');
    expect(plain('local')).toBe('local');
    expect(plain('twice')).toBe('(("chelated")&("chelated"))');
    expect(plain('SUM(ofTable)', 'Card')).toBe("SUM('Log sheet'!$E$4:$E$8)");
    expect(plain('QT.AUDIT(grown,A1:B9)')).toBe(
      "QT.AUDIT((OFFSET('Log sheet'!$B$3,0,0,COUNTA('Log sheet'!$B:$B),4)),A1:B9)",
    );
  });

  it('counts relative references of names from the cell', () => {
    expect(plain('beside', 'Card', 0, 0)).toBe('Card!B1');
    expect(plain('beside', 'Card', 4, 6)).toBe('Card!H5');
    expect(plain('column', 'Card', 4, 6)).toBe('Card!G$1:G$5');
    expect(plain('beside', 'Card', 1_048_575, 16_383)).toBe('Card!A1048576');
  });

  it('ends where names lead back to themselves', () => {
    expect(plain('round')).toBe('((#REF!+1))');
  });

  it('calls a named LAMBDA', () => {
    expect(plain('Double(4)')).toBe('(LAMBDA(x,x*2))(4)');
  });

  it('leaves values of LET and LAMBDA, texts, functions and plain references', () => {
    const formulas = ['LET(band,2,band*BAND)', '"band Log[When]"', 'SUM(A1:B2,$C$3)', 'unknown+1', "'Log sheet'!A1"];
    for (const formula of formulas) expect(plain(formula)).toBe(formula);
    expect(plain('_xlfn.LET(_xlpm.band,2,_xlpm.band)')).toBe('_xlfn.LET(_xlpm.band,2,_xlpm.band)');
  });

  it('prefers a defined name to a table of the same name', () => {
    expect(plainReferences('log', { sheet: 'Card', row: 0, column: 0, tables: [log], names })).toBe(
      "'Log sheet'!$B$3:$E$9",
    );
  });
});
