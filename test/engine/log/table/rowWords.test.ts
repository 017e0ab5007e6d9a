import { readLog } from '../../../../src/engine/log/table/readLog.js';
import { rowWords } from '../../../../src/engine/log/table/rowWords.js';
import type { Cell } from '../../../../src/engine/units/cell.js';

const said = (note: string) => {
  const range = [
    ['When', 'Cu', 'Note'],
    [46082, 2.1, note],
  ];
  const log = readLog({
    log: { range, firstRow: 1, cellOf: (raw) => (raw === undefined ? null : (raw as Cell)) },
    gallon: 'US',
    needs: ['time', 'copper'],
  });
  if (!log.ok) throw new Error(JSON.stringify(log.problem));
  return rowWords(log.value)(0);
};

describe('rowWords', () => {
  it.each([
    'matched',
    'WC matched with copper',
    'Premixed to 2.15',
    'pre-mixed',
    'new water at the same level',
    'copper in the new water',
  ])('reads %j as a matched change', (note) => {
    expect(said(note).matched).toBe(true);
  });

  it.each([
    '',
    'not matched',
    'unmatched',
    'forgot copper in new water',
    'Change; copper for the new water forgotten',
    'no copper in the new water',
    'copper in new water forgotten: not matched',
    'all quiet',
  ])('reads %j as one that is not', (note) => {
    expect(said(note).matched).toBe(false);
  });

  it('reads the order of a reading from the note', () => {
    expect(said('test was after dose')).toMatchObject({ afterDose: true, afterChange: false });
    expect(said('read after the WC')).toMatchObject({ afterDose: false, afterChange: true });
    expect(said('after water change')).toMatchObject({ afterChange: true });
    expect(said('day after day')).toEqual({ afterDose: false, afterChange: false, matched: false });
  });
});
