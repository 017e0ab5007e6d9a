import { cellKeyIn } from '../../../src/sheet/address/cellKey';

describe('cellKeyIn', () => {
  it.each([
    ['A1', 0, 0],
    ['C7', 6, 2],
    ['xfd1048576', 1_048_575, 16_383],
    ['AA10', 9, 26],
  ])('%s', (address, row, column) => {
    expect(cellKeyIn(address)).toBe(row * 16_384 + column);
  });

  it.each([
    '',
    'A',
    '1',
    'A0',
    'XFE1',
    'A1048577',
    'AAAA1',
    'A1B',
    '$A$1',
    'A-1',
    'A1.5',
    'Ä1',
    '[1',
    '@1',
    '`1',
    'A99999999999999999999',
  ])('%j is no place', (address) => {
    expect(cellKeyIn(address)).toBeUndefined();
  });
});
