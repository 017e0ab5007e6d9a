import { addressOf, cellRange } from '../../../sheet/index.js';
import type { Block, Look as DemoLook, SheetPlan as DemoSheet } from './sheetPlan.js';
import type { Look, SheetPlan } from '../templatePlan.js';

/** Where the cells of a look stand: to the right below a heading that does, else to the left. */
interface Sides {
  readonly left: Look;
  readonly right: Look;
}

const lookOf: Readonly<Record<DemoLook, Look | Sides>> = {
  title: 'lineTitle',
  note: 'aside',
  section: 'section',
  heading: 'heading',
  numberHeading: 'numberHeading',
  label: 'label',
  input: 'inputNumber',
  inputText: 'inputText',
  answer: 'answerNumber',
  spill: { left: 'spill', right: 'spillNumber' },
  spillText: 'spillSmall',
  unit: 'unit',
  log: { left: 'log', right: 'logNumber' },
  refusal: 'refusal',
  wrapped: { left: 'spillText', right: 'wrappedNumber' },
  caption: 'caption',
  warning: 'warning',
};

/** The looks of a sheet of the demo; cells without one come first, with plain letters. */
export function demoLooks({ looks, formats, blocks }: DemoSheet): SheetPlan['looks'] {
  return [
    ...formats.map(({ range }) => ({ range, look: 'plain' as const })),
    ...blocks.flatMap(textsIn),
    ...looks.flatMap(({ range, look }) => {
      const drawn = lookOf[look];
      if (typeof drawn === 'string') return [{ range, look: drawn }];
      const { firstRow, lastRow, firstColumn, lastColumn } = cellRange(range);
      return Array.from({ length: lastColumn - firstColumn + 1 }, (_, i) => {
        const column = firstColumn + i;
        const side = sideBelow(looks, firstRow, column);
        return { range: `${addressOf(firstRow, column)}:${addressOf(lastRow, column)}`, look: drawn[side] };
      });
    }),
  ];
}

function textsIn({ at, cells }: Block): SheetPlan['looks'] {
  const { firstRow, firstColumn } = cellRange(at);
  return cells.flatMap((row, r) =>
    row.flatMap((cell, c) =>
      cell === null ? [] : [{ range: addressOf(firstRow + r, firstColumn + c), look: 'log' as const }],
    ),
  );
}

/** By the nearest heading above; of two looks of one cell the last decides. */
function sideBelow(looks: DemoSheet['looks'], row: number, column: number): keyof Sides {
  let [nearest, side]: [number, keyof Sides] = [-1, 'left'];
  for (const { range, look } of looks) {
    if (look !== 'heading' && look !== 'numberHeading') continue;
    const { lastRow, firstColumn, lastColumn } = cellRange(range);
    if (column < firstColumn || lastColumn < column || lastRow >= row || lastRow < nearest) continue;
    [nearest, side] = [lastRow, look === 'heading' ? 'left' : 'right'];
  }
  return side;
}
