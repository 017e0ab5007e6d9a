import { parseReading } from '../../../src/engine/log/parseReading.js';
import type { Cell } from '../../../src/engine/units/cell.js';

const at = { row: 12 };
const level = (low: number, high = low, more: object = {}) => ({
  kind: 'level',
  low,
  high,
  approximate: false,
  ...more,
});

describe('parseReading', () => {
  it.each<[Cell, object]>([
    [2.05, level(2.05)],
    [0, level(0)],
    [20, level(20)],
    ['2.05', level(2.05)],
    ['2,05', level(2.05)],
    [' 2.05 ppm ', level(2.05)],
    ['2.05MG/L', level(2.05)],
    ['2250 ug/L', level(2.25)],
    ['2250 µg/l', level(2.25)],
    ['180 ppb', level(0.18)],
    ['.5', level(0.5)],
    ['0,125 ppm', level(0.125)],
    ['0,185', level(0.185)],
    ['0,19-0,205', level(0.19, 0.205)],
    ['0 mg/L', level(0)],
    ['<0.05', level(0, 0.05, { under: 0.05 })],
    ['< 0,05 ppm', level(0, 0.05, { under: 0.05 })],
    ['>5.0', level(5, Infinity)],
    ['>5.0 mg/L', level(5, Infinity)],
    ['~2.1', level(2.1, 2.1, { approximate: true })],
    ['about 2', level(2, 2, { approximate: true })],
    ['ca. 2.2', level(2.2, 2.2, { approximate: true })],
    ['2.1ish', level(2.1, 2.1, { approximate: true })],
    ['2.1 ish', level(2.1, 2.1, { approximate: true })],
    ['2.1?', level(2.1, 2.1, { approximate: true })],
    ['2.1 ppm?', level(2.1, 2.1, { approximate: true })],
    ['~ 2,1 ppm', level(2.1, 2.1, { approximate: true })],
    ['2.0-2.25', level(2, 2.25)],
    ['2.25-2.0', level(2, 2.25)],
    ['2.0 – 2.25 ppm', level(2, 2.25)],
    ['200-225 ppb', level(0.2, 0.225)],
    ['0.19/0.20', level(0.19, 0.2)],
    ['0.20 / 0.19 mg/L', level(0.19, 0.2)],
    ['1.05 x2', level(2.1)],
    ['1.05x2', level(2.1)],
    ['1.05 ppm × 2', level(2.1)],
    ['1.05 x2 ppm', level(2.1)],
    ['1050 x2 ug/L', level(2.1)],
    ['1.0-1.1 x2', level(2, 2.2)],
    ['<0.05 x2', level(0, 0.1, { under: 0.1 })],
    ['void 1.62', { kind: 'void' }],
    ['VOID: 2250', { kind: 'void' }],
    ['', { kind: 'untested' }],
    ['  ', { kind: 'untested' }],
    [null, { kind: 'untested' }],
    ['none', { kind: 'untested' }],
    ['None ', { kind: 'untested' }],
    ['-', { kind: 'untested' }],
    ['–', { kind: 'untested' }],
  ])('reads %j', (cell, expected) => {
    expect(parseReading(cell, at)).toEqual({ ok: true, value: expected });
  });

  it.each<[Cell, string]>([
    ['purple', 'not-a-reading'],
    ['LOW', 'not-a-reading'],
    ['ok', 'not-a-reading'],
    ['void', 'not-a-reading'],
    ['void LOW', 'not-a-reading'],
    [true, 'not-a-reading'],
    ['2.1 2.2', 'not-a-reading'],
    ['<2.0-2.2', 'not-a-reading'],
    ['1.05 x0', 'not-a-reading'],
    ['x2', 'not-a-reading'],
    ['2.1.2', 'not-a-reading'],
    ['--', 'not-a-reading'],
    ['1,250', 'three-digits-after-comma'],
    ['2.1 drops', 'unknown-unit'],
    ['3 constructor', 'unknown-unit'],
    [-0.1, 'reading-negative'],
    ['-2.1', 'reading-negative'],
    [20.01, 'reading-too-high'],
    [2250, 'reading-too-high'],
    ['2250', 'reading-too-high'],
    ['11 x2', 'reading-too-high'],
    ['>21', 'reading-too-high'],
    ['30000 ug/L', 'reading-too-high'],
    [{ error: '#N/A' }, 'error-cell'],
  ])('refuses %j', (cell, code) => {
    expect(parseReading(cell, at)).toMatchObject({ ok: false, problem: { code, at } });
  });

  it('knows whether a number too high had a unit', () => {
    expect(parseReading('2250', at)).toMatchObject({ problem: { bare: true } });
    expect(parseReading('2250 ppm', at)).toMatchObject({ problem: { bare: false } });
  });
});
