import { examples } from '../../functions/examples.js';
import { contract } from '../contract.js';
import { standInHost, type Answer, type ArgumentIn, type CellIn, type FunctionMetadata } from '../host/standInHost.js';
import { callIn } from './callIn.js';
import { errorCells } from './cells.js';

const host = standInHost();

interface Argument {
  readonly id: string;
  readonly at: number;
  /** As a message names it. */
  readonly word: string;
  readonly isOptional: boolean;
  readonly isRange: boolean;
  /** The arguments of the example, null for those that it leaves out. */
  readonly args: readonly ArgumentIn[];
}

/** The contract's word without the unit that some words carry. */
const wordOf = (entry: FunctionMetadata, at: number): string => {
  const words = contract.find(({ name }) => name === entry.name);
  const word = [...(words?.required ?? []), ...(words?.optional ?? [])][at] ?? '';
  return word.replace(/ (mL|L|mg\/L)$/, '');
};

const all: readonly Argument[] = host.metadata.functions.flatMap((entry) => {
  const example = examples.find(({ name }) => name === entry.name);
  const given = example === undefined ? [] : callIn(example.formula).given;
  const args = entry.parameters.map((_, i) => (given[i] === undefined ? null : (given[i] as ArgumentIn)));
  return entry.parameters.map((parameter, at): Argument => ({
    id: entry.id,
    at,
    word: wordOf(entry, at),
    isOptional: parameter.optional === true,
    isRange: parameter.dimensionality === 'matrix',
    args,
  }));
});
const titled = (list: readonly Argument[]) => list.map((it) => [it.id, it.word, it] as const);
const cellOf = (it: Argument): CellIn => it.args[it.at];
const filled = all.filter((it) => !it.isRange && cellOf(it) !== null);
const numeric = filled.filter((it) => typeof cellOf(it) === 'number');

function withArgument({ id, args, at }: Argument, value: ArgumentIn): Answer {
  return host.call(id, ...args.map((arg, i) => (i === at ? value : arg)));
}
const asItStands = (it: Argument): Answer => host.call(it.id, ...it.args);
const rich = (cell: CellIn): CellIn => ({ type: typeof cell === 'number' ? 'Double' : 'String', basicValue: cell });

/** Ranges that are not columns of readings, times or signs: their faults name the argument, not a row. */
const isList = ({ word }: Argument): boolean => ['when', 'copper', 'rise', 'signs', 'fish'].includes(word);

describe('every cell function', () => {
  it('is looked at', () => {
    expect(all.length).toBeGreaterThan(120);
    expect(filled.length).toBeGreaterThan(60);
    expect(all.every(({ word }) => word !== '')).toBe(true);
  });

  it.each(titled(filled))('%s takes %s as a block of one cell and as a rich cell', (_, __, it) => {
    const answer = asItStands(it);
    expect(answer).not.toHaveProperty('error');
    expect(withArgument(it, [[cellOf(it)]])).toEqual(answer);
    expect(withArgument(it, rich(cellOf(it)))).toEqual(answer);
  });

  it.each(titled(numeric))('%s takes %s as text', (_, __, it) => {
    expect(withArgument(it, ` ${String(cellOf(it))} `)).toEqual(asItStands(it));
  });

  it.each(titled(all.filter(({ isRange }) => !isRange)))('%s names %s when it holds an error', (_, word, it) => {
    for (const error of errorCells) {
      expect(withArgument(it, error)).toEqual({
        error: '#VALUE!',
        message: `${word} holds the spreadsheet error #N/A; fix that cell`,
      });
    }
  });

  it.each(titled(all.filter(({ isRange }) => !isRange)))('%s wants one cell for %s', (_, word, it) => {
    expect(withArgument(it, [[1], [2]])).toEqual({
      error: '#VALUE!',
      message: `${word} has 2 cells where one value is wanted; give one cell and fill the formula down`,
    });
  });

  it.each(titled(all.filter(({ isRange }) => !isRange)))('%s takes no TRUE for %s', (_, word, it) => {
    const answer = withArgument(it, true);
    expect(answer).toMatchObject({ error: '#VALUE!' });
    expect(answer).toHaveProperty('message', expect.stringContaining(`${word} TRUE`));
  });

  it.each(titled(all.filter((it) => !it.isRange && !it.isOptional && it.word !== 'reading')))(
    '%s asks for %s when it is blank',
    (_, word, it) => {
      const blank = withArgument(it, null);
      expect(blank).toHaveProperty('message', expect.stringMatching(new RegExp(`^${word} is blank; `)));
      for (const empty of ['', '  ', [[null]], [[]], { type: 'Empty' }]) {
        expect(withArgument(it, empty)).toEqual(blank);
      }
    },
  );

  it.each(titled(all.filter(({ isOptional }) => isOptional)))('%s does without %s', (_, __, it) => {
    const without = withArgument(it, undefined);
    for (const empty of [null, '', '  ', [[null]], [['']], { type: 'Empty' }]) {
      expect(withArgument(it, empty)).toEqual(without);
    }
  });

  // Some hosts send an empty cell as 0.
  it.each(titled(all.filter(({ isOptional }) => isOptional)))('%s takes a bare 0 for %s as left out', (_, __, it) => {
    expect(withArgument(it, 0)).toEqual(withArgument(it, null));
  });

  const ranges = titled(all.filter((it) => it.isRange && Array.isArray(it.args[it.at])));
  it.each(ranges)('%s takes rich cells in %s', (_, __, it) => {
    const cells = it.args[it.at] as CellIn[][];
    expect(
      withArgument(
        it,
        cells.map((row) => row.map(rich)),
      ),
    ).toEqual(asItStands(it));
  });

  it.each(ranges.filter(([, , it]) => isList(it)))('%s names the row of an error in %s', (_, __, it) => {
    const cells = it.args[it.at] as CellIn[][];
    for (const error of errorCells) {
      expect(
        withArgument(
          it,
          cells.map((row, i) => (i === 1 ? [error] : row)),
        ),
      ).toEqual({
        error: '#VALUE!',
        message: 'row 2 holds the spreadsheet error #N/A; fix that cell, or leave it empty',
      });
    }
  });

  it.each(ranges.filter(([, word]) => word === 'when'))('%s takes rows for columns', (_, __, it) => {
    const across = it.args.map((arg) => (Array.isArray(arg) ? [(arg as CellIn[][]).flat()] : arg));
    expect(host.call(it.id, ...across)).toEqual(asItStands(it));
  });

  it.each(ranges.filter(([, word]) => word === 'when'))('%s says when the ranges are unequal', (_, __, it) => {
    const cells = it.args[it.at] as CellIn[][];
    const answer = withArgument(it, cells.slice(1));
    expect(answer).toMatchObject({ error: '#VALUE!' });
    expect(answer).toHaveProperty(
      'message',
      expect.stringMatching(
        new RegExp(
          `^when has ${cells.length - 1} cells, (copper|signs) ${cells.length}; give ranges of the same rows$`,
        ),
      ),
    );
  });
});
