import { levelSpan, type LevelSpan } from './levelSpan.js';
import type { PlotData } from './plotParts.js';

/** Where everything stands. [px] */
export interface PlotFrame {
  readonly width: number;
  readonly height: number;
  /** Edges of the levels. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Where the lowest level stands: the bottom, or a little above it. */
  readonly floor: number;
  /** Moments at the left and right edge. [serial day] */
  readonly from: number;
  readonly to: number;
  readonly levels: LevelSpan;
  readonly rows: readonly StripRow[];
  /** Top of the key. */
  readonly keyTop: number;
  /** A narrow picture says less in its labels. */
  readonly isNarrow: boolean;
  readonly x: (when: number) => number;
  readonly y: (level: number) => number;
}

const narrow = 560;
/** Room for a lane of labels above the levels, for the time axis, and the least for the levels. */
const lane = 13;
const aboveLanes = 15;
const axis = 32;
const leastLevels = 120;

interface Wanted {
  readonly width: number;
  readonly height: number;
  readonly keyHeight: number;
  /** Lanes of labels above the levels. */
  readonly lanes: number;
}

/** Room for the arrow of a bound that points down from the lowest level. [px] */
const arrowRoom = 10;

/** The places of a picture: labels of breaks, levels, time axis, strips, key, from top to bottom. */
export function plotFrame(data: PlotData, { width, height, keyHeight, lanes }: Wanted): PlotFrame {
  const isNarrow = width < narrow;
  const left = 64;
  const right = width - (isNarrow ? 56 : 70);
  const stripsHeight = stripRows(data, 0).reduce((sum, row) => sum + row.height, 0);
  const below = axis + stripsHeight + keyHeight + 6;
  const top = aboveLanes + lanes * lane;
  const bottom = top + Math.max(leastLevels, height - top - below);
  const rows = stripRows(data, bottom + axis);
  const span = data.to - data.from;
  const pad = span === 0 ? 0.5 : span * 0.015;
  const [from, to] = [data.from - pad, data.to + pad];
  const levels = levelSpan(data);
  const floor = bottom - (data.readings.some(({ bound }) => bound === 'under') ? arrowRoom : 0);
  return {
    ...{ width, height: bottom + below, left, right, top, bottom, floor, from, to, levels, rows, isNarrow },
    keyTop: bottom + axis + stripsHeight + 6,
    x: (when) => left + ((when - from) / (to - from)) * (right - left),
    y: (level) => floor - ((level - levels.low) / (levels.high - levels.low)) * (floor - top),
  };
}

/** A line of marks below the levels, named at its left. */
export interface StripRow {
  readonly name: 'Holds' | 'No test' | 'Doses' | 'Changes' | 'Fish' | 'Unread';
  readonly top: number;
  readonly height: number;
  readonly middle: number;
}

/** The strips that this plot has something for, from top to bottom; the holds are always there. */
function stripRows(data: PlotData, top: number): StripRow[] {
  const { holds, untested, doses, changes, fish, unread } = data;
  const wanted = [
    { name: 'Holds' as const, count: Math.max(1, holds.length), height: 26 },
    { name: 'No test' as const, count: untested.length, height: 18 },
    { name: 'Doses' as const, count: doses.length, height: 18 },
    { name: 'Changes' as const, count: changes.length, height: 18 },
    { name: 'Fish' as const, count: fish.length, height: 18 },
    { name: 'Unread' as const, count: unread.length, height: 18 },
  ];
  let next = top;
  return wanted
    .filter(({ count }) => count > 0)
    .map(({ name, height }) => {
      const row = { name, top: next, height, middle: next + height / 2 };
      next += height;
      return row;
    });
}
