import { fileStyle } from '../../../src/app/page/fileStyle.js';
import type { LineKind } from '../../../src/sheet/book/cellLook.js';

// The sheet component itself loads in a browser alone: its numbers for kinds and switches stand here.
jest.mock('@univerjs/core', () => ({
  BooleanNumber: { FALSE: 0, TRUE: 1 },
  BorderStyleTypes: { THIN: 1, HAIR: 2, DOTTED: 3, DASHED: 4, DASH_DOT: 5, DOUBLE: 7, MEDIUM: 8, THICK: 13 },
  HorizontalAlign: { UNSPECIFIED: 0, LEFT: 1, CENTER: 2, RIGHT: 3, JUSTIFIED: 4 },
  VerticalAlign: { TOP: 1, MIDDLE: 2, BOTTOM: 3 },
  WrapStrategy: { OVERFLOW: 1, CLIP: 2, WRAP: 3 },
}));
jest.mock('../../../src/app/page/fontOnMachine.js', () => ({ fontOnMachine: (name: string) => name === 'Arial' }));

const keys = ['bd', 'bg', 'bl', 'cl', 'ff', 'fs', 'ht', 'it', 'n', 'pd', 'st', 'tb', 'ul', 'vt'];

describe('fileStyle', () => {
  it('says everything, so that no style of a row or a column shines through', () => {
    for (const style of [fileStyle({}), fileStyle({ bold: true, wrap: true, fill: '#ffffff' }, '0.0')]) {
      expect(Object.keys(style).sort()).toEqual(keys);
      expect(Object.values(style)).not.toContain(undefined);
    }
  });

  it('draws letters, paper and place', () => {
    expect(
      fileStyle({ bold: true, italic: true, underline: true, struck: true, size: 9, font: 'Arial', colour: '#7a2e0e' }),
    ).toMatchObject({ bl: 1, it: 1, ul: { s: 1 }, st: { s: 1 }, fs: 9, ff: 'Arial', cl: { rgb: '#7a2e0e' }, bg: null });
    expect(fileStyle({ fill: '#fdf3ec', across: 'center', upright: 'top', wrap: true })).toMatchObject({
      bg: { rgb: '#fdf3ec' },
      ht: 2,
      vt: 1,
      tb: 3,
    });
    expect(fileStyle({}, 'yyyy-mm-dd')).toMatchObject({ n: { pattern: 'yyyy-mm-dd' }, ht: 0, vt: 3 });
  });

  it('leaves out a font that is not on this machine', () => {
    expect(fileStyle({ font: 'Of another machine' }).ff).toBeNull();
  });

  it('indents from the side at which the text stands', () => {
    const [left, right] = [fileStyle({ indent: 2 }).pd, fileStyle({ indent: 2, across: 'right' }).pd];
    expect([left?.l, left?.r]).toEqual([right?.r, right?.l]);
    expect(left?.l).toBeGreaterThan(15);
  });

  it('draws each kind of border, in the colour of the letters where it has none', () => {
    const kinds: LineKind[] = ['hair', 'thin', 'medium', 'thick', 'dotted', 'dashed', 'dash-dot', 'double'];
    const drawn = kinds.map((line) => fileStyle({ borders: { top: { line, colour: '#cfd8dc' } } }).bd?.t);
    expect(new Set(drawn.map((border) => border?.s)).size).toBe(kinds.length);
    expect(drawn[1]).toEqual({ s: 1, cl: { rgb: '#cfd8dc' } });
    expect(fileStyle({ colour: '#7a2e0e', borders: { left: { line: 'thin' } } }).bd).toEqual({
      t: null,
      r: null,
      b: null,
      l: { s: 1, cl: { rgb: '#7a2e0e' } },
    });
  });
});
