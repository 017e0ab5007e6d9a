import type { LogHeading } from '../sheets/logColumns.js';
import { rowsOf } from '../sheets/rowsOf.js';

/** The columns of the log, in words that `QT.HEADINGS` reads. */
export const tankHeadings = [
  'Date and time',
  'Copper mg/L',
  'Water change L',
  'New water mg/L',
  'Dose mL',
  'Top-off L',
  'Temperature °C',
  'Salinity g/kg',
  'pH',
  'Ammonia mg/L',
  'Fish in',
  'Fish out',
  'Dead',
  'Signs',
  'Notes',
  'By',
] as const satisfies readonly LogHeading[];

/**
 * Example rows of an invented keeper, chelated copper in 120 L, a column between two bars: four days of raising, a day
 * without a test, a change whose copper was forgotten, and the days since. They show the form and are to be deleted.
 */
const kept = `
2026-03-01 18:30|<0.05|  |    |   | |25.4|33  |8.1|0|2 clownfish, 1 royal gramma| | |              |example rows: delete them
2026-03-02 08:00|     |  |    |3.4| |    |    |   | |                           | | |              |first of eight doses
2026-03-02 20:00|0.28 |  |    |3.4| |    |    |   | |                           | | |all eating    |
2026-03-03 08:00|0.56 |  |    |3.4| |    |    |   | |                           | | |              |
2026-03-03 20:00|0.84 |  |    |3.4| |    |    |   | |                           | | |all eating    |
2026-03-04 08:00|1.13 |  |    |3.4| |25.2|33  |   | |                           | | |              |
2026-03-04 20:00|1.41 |  |    |3.4| |    |    |   | |                           | | |              |
2026-03-05 08:00|1.69 |  |    |3.4| |    |    |   | |                           | | |all eating    |
2026-03-05 20:00|1.97 |  |    |3.4| |    |    |   | |                           | | |              |in the band
2026-03-06 08:00|2.25 |  |    |   | |    |    |   | |                           | | |all eating    |
2026-03-07 08:10|2.24 |  |    |   |2|    |    |   | |                           | | |              |
2026-03-08 08:00|2.25 |24|2.25|   | |25.3|33  |8.1|0|                           | | |              |5.4 mL into the new water first
2026-03-09 08:00|     |  |    |   | |    |    |   | |                           | | |all eating    |not tested, late shift
2026-03-10 08:00|~2.2 |  |    |   | |    |    |   | |                           | | |              |colour hard to tell
2026-03-11 08:05|2.23 |  |    |   |2|    |    |   | |                           | | |              |
2026-03-12 08:00|2.22 |  |    |   | |    |    |   | |                           | | |all eating    |
2026-03-13 08:00|2.22 |  |    |   | |    |    |   | |                           | | |              |
2026-03-13 18:00|     |24|    |   | |25.1|33.2|   | |                           | | |              |copper for the new water forgotten
2026-03-14 08:00|1.78 |  |    |3  | |    |    |   | |                           | | |              |below the band, raising again
2026-03-14 20:00|2.03 |  |    |2.6| |    |    |   | |                           | | |all eating    |back in the band, day one
2026-03-15 08:00|2.24 |  |    |   | |    |    |   | |                           | | |              |
2026-03-16 08:00|2.23 |  |    |   |2|    |    |   | |                           | | |all eating    |
2026-03-17 08:00|2.24 |24|2.25|   | |25.2|33  |8.1|0|                           | | |              |5.4 mL into the new water first
2026-03-18 08:00|2.23 |  |    |   | |    |    |   | |                           | | |all eating    |
2026-03-19 08:10|2.22 |  |    |   | |    |    |   | |                           | | |              |
2026-03-20 08:00|2.21 |  |    |   |2|    |    |   | |                           | | |all eating    |
2026-03-21 08:00|2.22 |  |    |   | |    |    |   | |                           | | |              |
2026-03-22 08:00|2.2  |  |    |   | |25.3|33.1|   | |                           | | |all eating    |
2026-03-23 08:00|2.2  |  |    |   | |    |    |   | |                           | | |              |
`;

/** Each ends with the word by which the sheet knows an example. */
export const tankLogRows = rowsOf(kept).map((row) => [...row, 'example']);
