import { callFunction } from '../../../src/app/calls/callFunction.js';
import type { Given } from '../../../src/sheet/cell/cellValue.js';
import { customFunctions, type Implementation } from '../../../src/app/calls/customFunctions.js';
import type { FunctionEntry } from '../../../src/app/calls/functionCatalogue.js';

const { global } = customFunctions();
const entry: FunctionEntry = {
  id: 'DOSE',
  name: 'DOSE',
  parameters: [{ name: 'volume' }, { name: 'form', optional: true }],
};
const call = (implementation: Implementation, given: Given[] = [1], options?: FunctionEntry['options']) =>
  callFunction({
    entry: { ...entry, ...(options === undefined ? {} : { options }) },
    implementation,
    given,
    allowErrors: true,
    address: 'Log!H4',
  });

describe('callFunction', () => {
  it('passes the invocation last, with the address only where it is asked for', () => {
    const seen: unknown[][] = [];
    const keep: Implementation = (...values) => seen.push(values);
    call(keep);
    call(keep, [1, 'amine'], { requiresAddress: true });
    expect(seen).toEqual([
      [1, null, { functionName: 'DOSE' }],
      [1, 'amine', { functionName: 'DOSE', address: 'Log!H4' }],
    ]);
  });

  it.each<[string, unknown, unknown]>([
    ['a number', 2.5, 2.5],
    ['a text', '', ''],
    ['a truth value', true, true],
    ['NaN, as hosts do', NaN, 0],
    ['nothing, as hosts do', null, 0],
    ['a rich number', { type: 'FormattedNumber', basicValue: 4 }, 4],
  ])('shows %s', (_, result, value) => {
    expect(call(() => result)).toEqual({ kind: 'cell', value });
  });

  it('shows rows as a table, with hosts’ zero for what is not a value', () => {
    const rows = [
      ['When', 'Dose mL'],
      [46082, ''],
      [null, Infinity],
    ];
    expect(call(() => rows)).toEqual({
      kind: 'table',
      rows: [
        ['When', 'Dose mL'],
        [46082, ''],
        [0, 0],
      ],
    });
  });

  it.each([[[]], [[[]]], [[[1, 2], [3]]], [[1, 2]]])('refuses a ragged or empty array: %j', (result) => {
    expect(call(() => result)).toEqual({ kind: 'error', code: '#VALUE!', message: '' });
  });

  const thrown = (error: unknown) =>
    call(() => {
      throw error;
    });

  it('keeps the sentence of #VALUE! and #N/A, and of no other error', () => {
    const { Error: HostError, ErrorCode } = global;
    expect(thrown(new HostError(ErrorCode.invalidValue, 'write "amine"'))).toEqual({
      kind: 'error',
      code: '#VALUE!',
      message: 'write "amine"',
    });
    expect(thrown(new HostError(ErrorCode.notAvailable, 'test first'))).toMatchObject({
      code: '#N/A',
      message: 'test first',
    });
    expect(thrown(new HostError(ErrorCode.divisionByZero, 'lost'))).toMatchObject({ code: '#DIV/0!', message: '' });
    expect(thrown(new TypeError('lost'))).toMatchObject({ code: '#VALUE!', message: '' });
  });

  it('names the function that was given too many arguments', () => {
    expect(call(() => 1, [1, 2, 3])).toEqual({
      kind: 'error',
      code: '#VALUE!',
      message: 'QT.DOSE takes at most 2 arguments: volume, form',
    });
  });
});

describe('customFunctions', () => {
  it('collects what a bundle associates, one by one or as a map', () => {
    const { global: functions, associated } = customFunctions();
    const one = () => 1;
    functions.associate('DOSE', one);
    functions.associate({ Rise: one });
    expect([...associated.keys()]).toEqual(['DOSE', 'RISE']);
    expect(() => functions.associate('BAND')).toThrow('BAND');
  });
});
