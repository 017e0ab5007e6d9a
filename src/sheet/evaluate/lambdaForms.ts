import { isCellError, errorCell, type CellValue } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { cellNumber } from './cellReading.js';
import { content } from './content.js';
import { mapped } from './mapped.js';
import { isGrid, Lambda, type Grid, type Value, type Form, type Scope } from './value.js';

type Given = readonly (FormulaNode | undefined)[];

/** LET, LAMBDA and the functions that call one for every cell, row or column. */
export const lambdaForms: ReadonlyMap<string, Form> = new Map<string, Form>([
  ['LET', letForm],
  ['LAMBDA', lambdaForm],
  ['MAP', (given, scope) => withLambda(given, scope, (lambda, sources) => mapped(sources, cellBy(lambda, scope)))],
  [
    'BYROW',
    (given, scope) =>
      withLambda(given, scope, (lambda, [source]) => gridOf(source).map((row) => [cellBy(lambda, scope)([row])])),
  ],
  [
    'BYCOL',
    (given, scope) =>
      withLambda(given, scope, (lambda, [source]) => {
        const grid = gridOf(source);
        return [(grid[0] ?? []).map((_, column) => cellBy(lambda, scope)(grid.map((row) => [row[column] ?? null])))];
      }),
  ],
  [
    'REDUCE',
    (given, scope) => withLambda(given, scope, (lambda, sources) => folded(lambda, sources, scope).at(-1) ?? null),
  ],
  ['SCAN', (given, scope) => withLambda(given, scope, (lambda, sources) => scanned(lambda, sources, scope))],
  ['MAKEARRAY', (given, scope) => withLambda(given, scope, (lambda, sources) => made(lambda, sources, scope))],
]);

function letForm(given: Given, scope: Scope): Value {
  const names = new Map(scope.names);
  const inner: Scope = { ...scope, names };
  for (let i = 0; i + 2 < given.length; i += 2) {
    const [name, node] = [given[i], given[i + 1]];
    if (name?.kind !== 'name') return errorCell('#NAME?');
    names.set(name.name, node === undefined ? null : scope.evaluate(node, { ...inner, names: new Map(names) }));
  }
  const last = given.at(-1);
  return given.length % 2 === 0 || last === undefined ? errorCell('#VALUE!') : scope.evaluate(last, inner);
}

function lambdaForm(given: Given, scope: Scope): Value {
  const body = given.at(-1);
  const parameters = given.slice(0, -1).map((node) => (node?.kind === 'name' ? node.name : undefined));
  if (body === undefined || parameters.includes(undefined)) return errorCell('#VALUE!');
  return new Lambda(
    parameters.filter((name) => name !== undefined),
    body,
    { ...scope, intersects: false },
  );
}

/** Reads the arguments, of which the last is a function. */
function withLambda(given: Given, scope: Scope, work: (lambda: Lambda, sources: (CellValue | Grid)[]) => Value): Value {
  const last = given.at(-1);
  const lambda = last === undefined ? null : scope.evaluate(last, scope);
  if (!(lambda instanceof Lambda)) return errorCell('#VALUE!');
  return work(
    lambda,
    given.slice(0, -1).map((node) => (node === undefined ? null : content(scope.evaluate(node, scope), scope))),
  );
}

/** A function whose answer goes into one cell. */
function cellBy(lambda: Lambda, scope: Scope): (...given: Value[]) => CellValue {
  return (...given) => {
    const answer = content(applied(lambda, given), scope);
    return isGrid(answer) ? errorCell('#CALC!') : answer;
  };
}

/** Every value that a REDUCE passes through, cell by cell. */
function folded(lambda: Lambda, [start = null, source]: (CellValue | Grid)[], scope: Scope): (CellValue | Grid)[] {
  const steps: (CellValue | Grid)[] = [];
  let held: CellValue | Grid = start;
  for (const cell of gridOf(source).flat()) {
    held = content(applied(lambda, [held, cell]), scope);
    steps.push(held);
  }
  return steps.length === 0 ? [start] : steps;
}

function scanned(lambda: Lambda, sources: (CellValue | Grid)[], scope: Scope): Value {
  const steps = folded(lambda, sources, scope).map((step) => (isGrid(step) ? errorCell('#CALC!') : step));
  const width = gridOf(sources[1])[0]?.length ?? 1;
  return Array.from({ length: steps.length / width }, (_, row) => steps.slice(row * width, (row + 1) * width));
}

function made(lambda: Lambda, [height = null, width = null]: (CellValue | Grid)[], scope: Scope): Value {
  const [rows, columns] = [cellNumber(isGrid(height) ? null : height), cellNumber(isGrid(width) ? null : width)];
  if (isCellError(rows)) return rows;
  if (isCellError(columns)) return columns;
  if (rows < 1 || columns < 1 || rows * columns > 1_000_000) return errorCell('#VALUE!');
  return Array.from({ length: Math.trunc(rows) }, (_, row) =>
    Array.from({ length: Math.trunc(columns) }, (__, column) => cellBy(lambda, scope)(row + 1, column + 1)),
  );
}

function gridOf(source: CellValue | Grid | undefined): Grid {
  return isGrid(source) ? source : [[source ?? null]];
}

/** What a function made by LAMBDA gives for arguments; anything else cannot be called. */
export function applied(lambda: Value, given: readonly Value[]): Value {
  if (!(lambda instanceof Lambda) || given.length !== lambda.parameters.length) return errorCell('#VALUE!');
  const { scope, body, parameters } = lambda;
  const names = new Map(scope.names);
  parameters.forEach((name, i) => names.set(name, given[i] ?? null));
  return scope.evaluate(body, { ...scope, names });
}
