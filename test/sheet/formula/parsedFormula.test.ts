import type { FormulaNode } from '../../../src/sheet/formula/formulaNode';
import { parsedFormula } from '../../../src/sheet/formula/parsedFormula';
import { addressRange } from '../../../src/sheet/address/addressOf';

/** A formula with a bracket around each step, in the order they are worked out. */
function steps(formula: string): string {
  return shown(parsedFormula(formula));
}

function shown(node: FormulaNode): string {
  switch (node.kind) {
    case 'value':
      return JSON.stringify(node.value);
    case 'array':
      return JSON.stringify(node.rows);
    case 'reference':
      return `${node.sheet === undefined ? '' : `${node.sheet}!`}${addressRange(node.range)}${node.isWhole ? ' whole' : ''}`;
    case 'name':
      return node.name;
    case 'call':
      return `${node.name}(${given(node.given)})`;
    case 'apply':
      return `${shown(node.of)}(${given(node.given)})`;
    case 'binary':
      return `[${shown(node.left)} ${node.operator} ${shown(node.right)}]`;
    case 'unary':
      return `[${node.operator} ${shown(node.of)}]`;
  }
}

function given(nodes: readonly (FormulaNode | undefined)[]): string {
  return nodes.map((node) => (node === undefined ? '' : shown(node))).join(',');
}

describe('parsedFormula', () => {
  it.each([
    ['1+2*3', '[1 + [2 * 3]]'],
    ['1-2-3', '[[1 - 2] - 3]'],
    ['-2^2', '[[- 2] ^ 2]'],
    ['2^-1', '[2 ^ [- 1]]'],
    ['2^3^2', '[[2 ^ 3] ^ 2]'],
    ['--A1', '[- [- A1:A1]]'],
    ['-5%', '[- [% 5]]'],
    ['50%%', '[% [% 50]]'],
    ['"a"&1+2="a3"', '[["a" & [1 + 2]] = "a3"]'],
    ['1<2=TRUE', '[[1 < 2] = true]'],
    ['(1+2)*3', '[[1 + 2] * 3]'],
    ['@A1:A9', '[@ A1:A9]'],
    ['SUM(G1#)', 'SUM([# G1:G1])'],
    ['A1:INDEX(A:A,5)', '[A1:A1 : INDEX(A1:A1048576 whole,5)]'],
    ['SUM(A1:B9 B2:C3)', 'SUM([A1:B9   B2:C3])'],
    ['IF(,1,)', 'IF(,1,)'],
    ['NOW()', 'NOW()'],
    ['{1,-2;"x",#N/A}', '[[1,-2],["x",{"type":"Error","basicValue":"#N/A"}]]'],
    ['LAMBDA(x,x+1)(2)', 'LAMBDA(x,[x + 1])(2)'],
    ["'Dad''s tank'!$B$2", "Dad's tank!B2:B2"],
    [' 1 + 2 ', '[1 + 2]'],
    ['_xlfn.LET(_xlpm.X,1,_xlpm.x)', 'LET(x,1,x)'],
    ['_xldudf_QT_BAND("amine")', 'QT.BAND("amine")'],
    ['"a""b"', '"a\\"b"'],
    ['1E3', '1000'],
    ['SUM(#REF!)', 'SUM({"type":"Error","basicValue":"#REF!"})'],
  ])('takes %s apart', (formula, expected) => {
    expect(steps(formula)).toBe(expected);
  });

  it.each([
    ['', 'lacks a value at its end'],
    ['1+', 'lacks a value at its end'],
    ['SUM(1', 'lacks a comma or a closing bracket at its end'],
    ['(1', 'lacks a closing bracket at its end'],
    ['1 2', 'should end before 2'],
    ['SUM(A1,)+)', 'lacks a value before )'],
    ['{1;2,3}', 'has an array with uneven rows'],
    ['"open', 'lacks a value before "open'],
    ['SUM((A1,B1))', 'joins ranges with a comma, which is not supported here'],
    ['[1]Log!A1+1', 'reads [1]Log!A1, in another file or in several sheets at once'],
    ['('.repeat(9000), 'is nested too deeply'],
    ['-'.repeat(9000), 'is nested too deeply'],
    ['IF(1,'.repeat(2000), 'is nested too deeply'],
  ])('refuses %s', (formula, message) => {
    expect(() => parsedFormula(formula)).toThrow(message);
  });
});
