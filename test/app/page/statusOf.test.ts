import type { FunctionEntry } from '../../../src/app/calls/functionCatalogue.js';
import { Refusals } from '../../../src/app/calls/refusals.js';
import { statusOf } from '../../../src/app/page/statusOf.js';

const entries: FunctionEntry[] = [
  {
    id: 'HOLDS',
    name: 'HOLDS',
    description: 'Every hold.',
    parameters: [{ name: 'when' }, { name: 'days', optional: true }],
  },
  { id: 'BAND', name: 'BAND', parameters: [{ name: 'form' }] },
];
const plain = { formula: '', error: undefined, reason: undefined, tableFrom: undefined };

describe('statusOf', () => {
  it('gives the sentence of the function with an error', () => {
    const cell = { ...plain, formula: '=QT.BAND("ionic")', error: '#VALUE!', reason: 'write "amine"' };
    expect(statusOf(cell, entries)).toEqual({ kind: 'refusal', text: 'write "amine"' });
  });

  it('explains the errors the sheet itself makes', () => {
    const cell = { ...plain, formula: '=QT.BNAD("amine")', error: '#NAME?' };
    expect(statusOf(cell, entries).text).toMatch(/check the spelling/);
    expect(statusOf({ ...cell, error: '#SPILL!', reason: '' }, entries).text).toMatch(/needs empty cells/);
    expect(statusOf({ ...cell, error: '#N/A' }, entries).text).toBe('the reason for this error is not known');
  });

  it('says what the function of an answer does, and where its table begins', () => {
    const cell = { ...plain, formula: '=qt.holds(A1:A9)' };
    expect(statusOf(cell, entries)).toEqual({ kind: 'hint', text: 'QT.HOLDS(when, [days])  Every hold.' });
    expect(statusOf({ ...cell, tableFrom: 'G12' }, entries).text).toMatch(/^Part of the table from G12\. QT\.HOLDS/);
  });

  it('repeats another formula, and says what to do in a cell without one', () => {
    expect(statusOf({ ...plain, formula: '=SUM(A1:A2)' }, entries).text).toBe('=SUM(A1:A2)');
    expect(statusOf(plain, entries).text).toMatch(/^Select an answer/);
  });
});

describe('Refusals', () => {
  it('keeps the first sentence of a cell until it is computed again', () => {
    const refusals = new Refusals();
    refusals.startRun();
    refusals.note('Log!3,7', 'first');
    refusals.note('Log!3,7', 'second');
    refusals.clear('Log!3,7');
    expect(refusals.reason('Log!3,7')).toBe('first');
    refusals.startRun();
    expect(refusals.reason('Log!3,7')).toBe('first');
    refusals.clear('Log!3,7');
    expect(refusals.reason('Log!3,7')).toBeUndefined();
  });
});
