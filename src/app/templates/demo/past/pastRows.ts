import type { Content, TableColumn } from '../../plan/index.js';
import { serialOf } from '../../sheets/rowsOf.js';

/** The log's columns in the keeper's own words and widths; how the numbers of a column were meant to be seen. */
export const pastColumns: readonly TableColumn[] = [
  { heading: 'Date', kind: 'time', width: 86, format: 'yyyy-mm-dd' },
  { heading: 'Time', kind: 'text', width: 68 },
  { heading: 'Cu test', kind: 'number', width: 72, format: '0.00' },
  { heading: 'meds mL', kind: 'number', width: 70, format: '0.0' },
  { heading: 'PWC gal', kind: 'number', width: 66, format: '0.0' },
  { heading: 'S.G.', kind: 'number', width: 50, format: '0.000' },
  { heading: 'Temp F', kind: 'number', width: 60, format: '0.0' },
  { heading: 'NH3', kind: 'number', width: 46, format: '0.00' },
  { heading: 'new fish', kind: 'text', width: 150 },
  { heading: 'moved', kind: 'text', width: 138 },
  { heading: 'morts', kind: 'text', width: 70 },
  { heading: 'feeding', kind: 'text', width: 126 },
  { heading: 'day #', kind: 'number', width: 48 },
  { heading: 'lights', kind: 'text', width: 46 },
  { heading: 'who', kind: 'text', width: 40 },
  { heading: 'comments', kind: 'text', width: 236 },
];

/**
 * The log as the keeper left it, a column between two bars. The date stands on the first row of a day only, as people write
 * it; a number after an apostrophe is a text, as in a spreadsheet.
 */
const kept = `
2026-01-04|18:30   |<0.05    |   |  |1.024|77  |   |                      |                      |         |                 |  ||TM|before any copper
          |19:30   |         |   |  |     |    |   |6 chromis, 2 clownfish|                      |         |                 |  ||TM|
2026-01-05|8:00 AM |         |3.9|  |     |    |   |                      |                      |         |yes              |  ||TM|three doses a day
          |2:00 PM |         |3.9|  |     |    |   |                      |                      |         |                 |  ||TM|
          |8:00 PM |0.38     |3.9|  |     |    |   |                      |                      |         |                 |  ||OV|
2026-01-06|8:00 AM |0.56     |3.9|  |     |77.2|   |                      |                      |         |                 |  ||TM|
          |2:00 PM |         |3.9|  |     |    |   |                      |                      |         |                 |  ||TM|
          |8:00 PM |0.93     |3.9|  |     |    |   |                      |                      |         |all eating       |  ||OV|
2026-01-07|8:00 AM |1.1      |3.9|  |     |77.2|   |                      |                      |         |                 |  ||TM|
          |2:00 PM |         |3.9|  |     |    |   |                      |                      |         |                 |  ||TM|
          |8:00 PM |1.49     |3.9|  |     |    |   |                      |                      |         |                 |  ||OV|
          |8:25 PM |         |3.9|  |     |    |   |                      |                      |         |                 |  ||TM|evening dose
2026-01-08|8:00 AM |1.88     |3.9|  |     |    |   |                      |                      |         |                 |  ||TM|higher than planned?
          |2:00 PM |         |3.9|  |     |    |   |                      |                      |         |                 |  ||TM|
          |8:00 PM |2.24     |   |  |     |    |   |                      |                      |         |                 |  ||OV|therapeutic
2026-01-09|8:00 AM |2.25     |   |  |     |77.4|   |                      |                      |         |yes              |1 ||TM|
2026-01-10|8:00 AM |2.24 ppm |   |  |     |    |   |                      |                      |         |yes              |2 ||TM|
2026-01-11|0830    |2.22     |   |  |1.024|    |   |                      |                      |         |                 |3 ||OV|
2026-01-12|8:00 AM |~2.2     |   |  |     |    |   |                      |                      |         |yes              |4 ||TM|colour hard to tell
2026-01-13|8:00 AM |2.2      |   |9 |     |    |   |                      |                      |         |                 |5 ||OV|
          |8:00 PM |1.85     |   |  |     |    |   |                      |                      |         |yes              |5 ||OV|no copper was in the new water
2026-01-14|8:00 AM |1.84     |8.5|  |     |    |   |                      |                      |         |                 |6 ||TM|topped the copper up again
          |8:00 PM |2.24     |   |  |     |77.2|   |                      |                      |         |                 |6 ||OV|
2026-01-15|8:00 AM |2.23     |   |  |     |    |   |                      |                      |         |yes              |7 ||TM|
2026-01-16|8:00 AM |2.24     |   |  |     |    |   |                      |                      |         |                 |8 ||TM|
2026-01-17|8:00 AM |2.22     |   |  |     |    |   |                      |                      |         |all eating       |9 ||TM|
2026-01-18|9:15 AM |'2.2     |   |8 |1.023|    |   |                      |                      |         |                 |10||OV|new water matched this time
2026-01-19|8:00 AM |2.21     |   |  |     |    |   |1 yellow tang         |                      |         |                 |11||TM|tang from another tank, untreated
2026-01-20|8:00 AM |2.2      |   |  |     |    |   |                      |                      |         |yes              |12||TM|away until Friday
2026-01-23|10:00 PM|2.19     |   |  |     |    |   |                      |                      |         |yes              |15||TM|back home, nobody tested
2026-01-24|8:00 AM |2.18     |   |  |     |77  |   |                      |                      |         |                 |16||TM|
2026-01-25|8:00 AM |2.19     |   |8 |     |    |   |                      |                      |         |yes              |17||OV|premixed
          |5:00 PM |         |   |  |     |    |   |                      |2 clownfish to display|         |                 |  ||OV|they look fine
2026-01-26|8:00 AM |2.18     |   |  |     |    |   |                      |                      |         |                 |18||TM|
2026-01-27|8:00 AM |2.16     |   |  |     |    |   |                      |                      |         |yes              |19||TM|
2026-01-28|8:00 AM |2.17     |   |  |     |    |   |                      |                      |         |                 |20||TM|
2026-01-29|8:00 AM |2.16     |3  |  |     |    |   |                      |                      |         |                 |21||OV|a little more
2026-01-30|8:00 AM |2.31     |   |  |1.023|    |   |                      |                      |         |yes              |22||TM|
2026-01-31|8:00 AM |2.29     |   |  |     |77.4|   |                      |                      |         |                 |23||TM|
2026-02-01|8:00 AM |2.29     |   |8 |     |    |   |                      |                      |         |all eating       |24||OV|premixed
2026-02-02|8:00 AM |2.28     |   |  |     |    |0.5|                      |                      |         |                 |25||TM|ammonia by the liquid test
          |8:15 AM |         |   |  |     |    |   |                      |                      |         |                 |  ||TM|ammonia binder, 10 mL
          |6:00 PM |         |   |  |     |    |   |                      |                      |2 chromis|                 |  ||OV|on the bottom, gasping before
2026-02-03|8:00 AM |2.27     |   |15|     |    |   |                      |                      |1 chromis|                 |26||TM|big change, premixed
          |6:00 PM |         |   |  |     |    |   |                      |                      |         |tang not eating  |  ||OV|
2026-02-04|8:00 AM |2.27     |   |  |     |    |   |                      |                      |         |tang eating again|27||TM|
2026-02-05|8:00 AM |2.26     |   |  |1.017|    |   |                      |                      |         |yes              |28||OV|too much fresh water
2026-02-06|8:00 AM |2.26     |   |  |1.019|    |   |                      |                      |         |yes              |29||TM|
2026-02-07|8:00 AM |void 1.26|   |  |     |    |   |                      |                      |         |                 |  ||TM|vial not filled, tested again
          |8:10 AM |2.25     |   |  |     |    |   |                      |                      |         |all eating       |30||TM|DAY 30, done
2026-02-08|8:00 AM |2.24     |   |27|     |    |   |                      |                      |         |yes              |  ||TM|copper out, half the water
2026-02-09|8:00 AM |1.12     |   |27|     |    |   |                      |                      |         |yes              |  ||TM|
2026-02-10|8:00 AM |0.57     |   |27|1.024|    |   |                      |                      |         |                 |  ||TM|
2026-02-11|8:00 AM |0.29     |   |27|     |    |   |                      |                      |         |yes              |  ||OV|
2026-02-12|8:00 AM |0.15     |   |  |     |    |   |                      |                      |         |all eating       |  ||TM|
2026-02-14|8:00 AM |0.14     |   |  |     |    |   |                      |                      |         |yes              |  ||TM|to display next week
`;

const columns = { date: 0, time: 1 };

/** The rows as cells. */
export const pastRows: readonly (readonly Content[])[] = kept
  .trim()
  .split('\n')
  .map((line) => line.split('|').map((cell, column) => contentOf(cell.trim(), column)));

function contentOf(written: string, column: number): Content {
  if (written === '') return null;
  if (column === columns.date) return serialOf(`${written} 00:00`);
  if (written.startsWith("'")) return written.slice(1);
  return column === columns.time || Number.isNaN(Number(written)) ? written : Number(written);
}
