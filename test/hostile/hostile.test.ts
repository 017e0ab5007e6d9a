import fc from 'fast-check';
import { examples } from '../../functions/examples.js';
import { callIn } from '../functions/callIn.js';
import { standInHost, type Answer, type ArgumentIn, type FunctionMetadata, type Scalar } from '../host/standInHost.js';
import { hostileArgument, hostileCell } from './hostileCells.js';

const host = standInHost();
const calls = 400;
const seed = 20260301;

/** Arguments of which every one may be anything. */
function anyArguments(entry: FunctionMetadata): fc.Arbitrary<ArgumentIn[]> {
  const needed = entry.parameters.filter((parameter) => parameter.optional !== true).length;
  return fc.array(hostileArgument, { minLength: needed, maxLength: entry.parameters.length });
}

/** The arguments of the function's example, null for what it leaves out. */
function exampleArguments(entry: FunctionMetadata): ArgumentIn[] {
  const example = examples.find(({ name }) => name === entry.name);
  const given = example === undefined ? [] : callIn(example.formula).given;
  return entry.parameters.map((_, i) => (given[i] === undefined ? null : (given[i] as ArgumentIn)));
}

/** A call that works, but for one cell or one argument: this reaches what lies behind the first check. */
function spoiltExample(entry: FunctionMetadata): fc.Arbitrary<ArgumentIn[]> {
  const args = exampleArguments(entry);
  const place = fc.nat({ max: entry.parameters.length - 1 });
  return fc.tuple(place, hostileArgument, hostileCell, fc.boolean(), fc.nat()).map(([at, whole, cell, one, row]) => {
    const before = args[at];
    const inside = one && Array.isArray(before) && before.length > 0;
    const spoilt = inside
      ? (before as unknown[][]).map((cells, i) => (i === row % before.length ? [cell] : cells))
      : whole;
    return args.map((arg, i) => (i === at ? spoilt : arg));
  });
}

/** Once in a while the example as it is, so that something is answered too. */
function argumentsOf(entry: FunctionMetadata): fc.Arbitrary<ArgumentIn[]> {
  const example = { weight: 1, arbitrary: fc.constant(exampleArguments(entry)) };
  if (entry.parameters.length === 0) return example.arbitrary;
  return fc.oneof(
    example,
    { weight: 20, arbitrary: anyArguments(entry) },
    { weight: 20, arbitrary: spoiltExample(entry) },
  );
}

const looksLikeANumber = (text: string): boolean => text.trim() !== '' && Number.isFinite(Number(text));

/** What is wrong with a sentence, past what it repeats of the cell in quotes. */
function sentenceFault(message: string): string | null {
  if (message.length > 200) return `${message.length} characters`;
  if (/[\p{Cc}\u2028\u2029]/u.test(message)) return 'control characters';
  const own = message.replace(/".*"|the error \S+/gs, '""');
  if (/undefined|NaN|\[object|Infinity|\bnull\b|\bat \S+:\d+:\d+/.test(own)) return 'machine words';
  if (/[.!?]\s+[A-Z]/.test(own.replace(/[\p{L}.]+ et al\./gu, ''))) return 'more than one sentence';
  return /^\S.{15,}\S$/su.test(message) ? null : 'too short to help';
}

function columnFault(rows: readonly (readonly Scalar[])[], column: number): string | null {
  const cells = rows.map((row) => row[column]).filter((cell) => cell !== '');
  const kinds = new Set(cells.map((cell) => typeof cell));
  return kinds.size > 1 ? `column ${column + 1} holds ${[...kinds].join(' and ')}` : null;
}

/** What stands on a card is numbers and words. */
const valueOfACard = 'Value';

function tableFault(rows: readonly (readonly Scalar[])[], isPair: boolean): string | null {
  if (isPair) return rows.length === 1 && rows[0]?.every((cell) => typeof cell === 'number') ? null : 'not two numbers';
  const [heading = [], ...body] = rows;
  if (!heading.every((cell) => typeof cell === 'string' && cell !== '')) return 'no heading';
  if (body.length === 0) return 'no row below the heading';
  if (body.length === 1 && body[0]?.[0] === 'none') return null;
  const faults = heading.map((name, column) => (name === valueOfACard ? null : columnFault(body, column)));
  return faults.find((fault) => fault !== null) ?? null;
}

/** Tables of two cells without a heading. */
const pairs = ['BAND', 'OBSERVEUNTIL'];

/** What no cell should show; null where the answer is a fair one. The host itself throws for NaN, null and ragged rows. */
function faultOf(entry: FunctionMetadata, answer: Answer): string | null {
  if (typeof answer === 'object' && 'error' in answer) {
    if (answer.error !== '#VALUE!' && answer.error !== '#N/A') return `the code ${answer.error}`;
    return answer.message === undefined ? 'no message' : sentenceFault(answer.message);
  }
  const isTable = entry.result.dimensionality === 'matrix';
  if (Array.isArray(answer) !== isTable) return 'a value where a table is promised, or the other way round';
  if (Array.isArray(answer)) return tableFault(answer, pairs.includes(entry.name));
  return typeof answer === 'string' && looksLikeANumber(answer) ? 'text that looks like a number' : null;
}

describe('whatever the cells hold', () => {
  it.each(host.metadata.functions.map((entry) => [entry.name, entry] as const))(
    '%s gives an answer or a readable reason',
    (_, entry) => {
      let answered = 0;
      let refused = 0;
      fc.assert(
        fc.property(argumentsOf(entry), (args) => {
          const answer = host.call(entry.id, ...args);
          expect([answer, faultOf(entry, answer)]).toEqual([answer, null]);
          if (typeof answer === 'object' && 'error' in answer) refused++;
          else answered++;
        }),
        { seed, numRuns: calls },
      );
      expect(answered + refused).toBeGreaterThanOrEqual(calls);
      expect(answered).toBeGreaterThan(0);
      expect(refused > 0).toBe(entry.parameters.length > 0);
    },
    60_000,
  );

  it('is looked at closely enough to see a bad answer', () => {
    const table = { result: { dimensionality: 'matrix' }, name: 'HOLDS' } as FunctionMetadata;
    const value = { result: {}, name: 'DOSE' } as FunctionMetadata;
    expect(faultOf(value, { error: '#NUM!', message: 'volume is blank; write litres' })).toBe('the code #NUM!');
    expect(faultOf(value, { error: '#VALUE!' })).toBe('no message');
    expect(faultOf(value, { error: '#VALUE!', message: 'volume undefined is not a volume' })).toBe('machine words');
    expect(faultOf(value, { error: '#VALUE!', message: 'x'.repeat(201) })).toBe('201 characters');
    expect(faultOf(value, { error: '#VALUE!', message: 'It is blank. Write a volume' })).toBe('more than one sentence');
    expect(faultOf(value, { error: '#VALUE!', message: 'volume\nis not a volume at all' })).toBe('control characters');
    expect(faultOf(value, '2.05')).toBe('text that looks like a number');
    expect(faultOf(table, 2)).toMatch(/a table is promised/);
    expect(faultOf(table, [['From', 'To']])).toBe('no row below the heading');
    expect(faultOf(table, [['From'], ['x'], [1]])).toBe('column 1 holds string and number');
    expect(faultOf({ ...table, name: 'BAND' }, [['low', 2]])).toBe('not two numbers');
    expect(faultOf(value, 2.05)).toBeNull();
  });
});
