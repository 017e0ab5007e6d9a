import type { CellValue } from '../cell/cellValue.js';
import { UnreadableFormula, type FormulaNode } from './formulaNode.js';
import type { Token } from './formulaTokens.js';
import { typedName } from './functionName.js';
import { parameterName } from './parameterTokens.js';
import { readReference } from './plainReference.js';
import type { TokenReader } from './tokenReader.js';

type Expression = (reader: TokenReader) => FormulaNode;

/** One value, reference, call or bracket, with the `#` and the calls that follow it. */
export function parsedOperand(reader: TokenReader, expression: Expression): FormulaNode {
  let node = bareOperand(reader, expression);
  for (;;) {
    if (reader.isOperator('#')) {
      reader.take();
      node = { kind: 'unary', operator: '#', of: node };
    } else if (reader.next?.kind === 'open' && !reader.hasSpace) {
      node = { kind: 'apply', of: node, given: givenIn(reader, expression) };
    } else return node;
  }
}

function bareOperand(reader: TokenReader, expression: Expression): FormulaNode {
  const kind = reader.next?.kind;
  if (kind === 'open') return bracketed(reader, expression);
  if (kind === 'openBrace') return arrayIn(reader);
  if (kind === 'function') {
    return { kind: 'call', name: typedName(reader.take().text), given: givenIn(reader, expression) };
  }
  if (kind === 'reference') return referenceOf(reader.take());
  if (kind === 'name') return { kind: 'name', name: parameterName(reader.take().text) };
  if (kind === 'outside') {
    throw new UnreadableFormula(`reads ${reader.take().text}, in another file or in several sheets at once`);
  }
  return { kind: 'value', value: constantIn(reader) };
}

function bracketed(reader: TokenReader, expression: Expression): FormulaNode {
  reader.take();
  const inner = expression(reader);
  if (reader.next?.kind === 'comma') {
    throw new UnreadableFormula('joins ranges with a comma, which is not supported here');
  }
  reader.expect('close', 'a closing bracket');
  return inner;
}

function referenceOf({ text }: Token): FormulaNode {
  const found = readReference(text);
  if (found === undefined) return { kind: 'value', value: { type: 'Error', basicValue: '#REF!' } };
  return { kind: 'reference', sheet: found.sheet, range: found.range, isWhole: found.whole !== undefined };
}

function givenIn(reader: TokenReader, expression: Expression): (FormulaNode | undefined)[] {
  reader.expect('open', 'an opening bracket');
  const given: (FormulaNode | undefined)[] = [];
  if (reader.skip('close')) return given;
  for (;;) {
    const isLeftOut = reader.next?.kind === 'comma' || reader.next?.kind === 'close';
    given.push(isLeftOut ? undefined : expression(reader));
    if (reader.skip('close')) return given;
    reader.expect('comma', 'a comma or a closing bracket');
  }
}

function arrayIn(reader: TokenReader): FormulaNode {
  reader.take();
  const rows: CellValue[][] = [[]];
  for (;;) {
    rows.at(-1)?.push(signedConstant(reader));
    if (reader.skip('closeBrace')) break;
    if (reader.skip('semicolon')) rows.push([]);
    else reader.expect('comma', 'a comma, a semicolon or }');
  }
  if (rows.some((row) => row.length !== rows[0]?.length)) throw new UnreadableFormula('has an array with uneven rows');
  return { kind: 'array', rows };
}

/** In an array a number stands with its sign, and may be a percentage. */
function signedConstant(reader: TokenReader): CellValue {
  const sign = reader.isOperator('-') ? -1 : 1;
  if (reader.isOperator('-', '+')) reader.take();
  const value = constantIn(reader);
  const whole = reader.isOperator('%') ? 100 : 1;
  if (whole === 100) reader.take();
  return typeof value === 'number' ? (sign * value) / whole : value;
}

function constantIn(reader: TokenReader): CellValue {
  const { kind, text = '' } = reader.next ?? {};
  const value =
    kind === 'number'
      ? Number(text)
      : kind === 'text'
        ? text.slice(1, -1).replaceAll('""', '"')
        : kind === 'truth'
          ? text.toUpperCase() === 'TRUE'
          : kind === 'error'
            ? { type: 'Error' as const, basicValue: text.toUpperCase() }
            : undefined;
  if (value === undefined) throw reader.fault('lacks a value');
  reader.take();
  return value;
}
