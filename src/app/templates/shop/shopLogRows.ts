import type { LogHeading } from '../sheets/logColumns.js';
import { rowsOf } from '../sheets/rowsOf.js';

/** The columns of the shared log, in words that `QT.HEADINGS` reads. */
export const shopHeadings = [
  'System',
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
  'Lot',
  'Fish in',
  'Fish out',
  'Dead',
  'Signs',
  'Notes',
  'By',
] as const satisfies readonly LogHeading[];

/**
 * Example rows of an invented shop, a column between two bars; they show the form and are to be deleted. One system is
 * raising, one below its band after a change without copper, one above it after a dose given twice, one was not tested for
 * three days, one has its fourteen days.
 */
const kept = `
Q6|2026-05-03 08:00|2.2 |  |    |   | |25.3|33  |8.1|0|L-12|4 royal gramma, 3 firefish| |             |           |example rows: delete them|example OV
Q6|2026-05-04 08:00|2.2 |  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q6|2026-05-05 08:10|2.19|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example TM
Q6|2026-05-06 08:00|2.19|  |    |   |4|    |    |   | |    |                          | |             |           |                     |example OV
Q1|2026-05-06 18:20|2.25|  |    |   | |25.1|33.2|8.1|0|L-14|6 blue chromis, 2 clownfish| |            |           |moved in with tank and water|example JK
Q6|2026-05-07 08:00|2.19|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q1|2026-05-07 08:15|2.24|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q6|2026-05-08 08:05|2.18|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example TM
Q1|2026-05-08 08:20|2.24|  |    |   | |    |    |   | |    |                          | |             |           |                     |example TM
Q5|2026-05-08 08:40|0.51|  |    |   | |25.4|33  |8.2|0|L-15|5 lyretail anthias        | |             |           |moved in with tank and water|example TM
Q6|2026-05-09 08:00|2.18|  |    |   |4|    |    |   | |    |                          | |             |           |                     |example OV
Q1|2026-05-09 08:15|2.23|  |    |   | |    |    |   | |    |                          | |1 blue chromis|          |on the bottom        |example OV
Q5|2026-05-09 08:30|0.5 |  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q6|2026-05-10 08:00|2.18|48|2.2 |   | |25.2|33  |8.1|0|    |                          | |             |all eating |5.3 mL into the new water first|example JK
Q1|2026-05-10 08:20|2.23|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example JK
Q5|2026-05-10 08:35|0.5 |  |    |   | |    |    |   | |    |                          | |             |           |                     |example JK
Q4|2026-05-10 08:45|2.25|  |    |   | |25.3|32.8|8.1|0|L-16|3 yellow tang             | |             |           |moved in with tank and water|example JK
Q6|2026-05-11 08:00|2.18|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q1|2026-05-11 08:10|2.23|  |    |   |4|    |    |   | |    |                          | |             |           |                     |example OV
Q3|2026-05-11 08:25|0.2 |  |    |   | |25  |33.1|8.1|0|L-17|8 banggai cardinal        | |             |           |moved in with tank and water|example OV
Q5|2026-05-11 08:40|0.49|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q4|2026-05-11 08:50|2.24|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q6|2026-05-12 08:05|2.18|  |    |   | |    |    |   | |    |                          | |             |           |                     |example TM
Q1|2026-05-12 08:15|2.22|48|2.25|   | |25.2|33  |8.1|0|    |                          | |             |all eating |5.4 mL into the new water first|example TM
Q3|2026-05-12 08:30|0.2 |  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example TM
Q5|2026-05-12 08:40|0.49|  |    |0.8| |    |    |   | |    |                          | |             |           |back towards 0.50    |example TM
Q4|2026-05-12 08:55|2.24|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example TM
Q6|2026-05-13 08:00|2.17|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q1|2026-05-13 08:10|2.23|  |    |   | |    |    |   | |    |                          | |             |           |                     |example OV
Q3|2026-05-13 08:25|0.19|  |    |0.8| |    |    |   | |    |                          | |             |all eating |back to 0.20         |example OV
Q5|2026-05-13 08:35|0.51|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q4|2026-05-13 08:50|2.23|  |    |   |4|    |    |   | |    |                          | |             |           |                     |example OV
Q6|2026-05-14 08:00|2.17|  |    |   |4|    |    |   | |    |                          | |             |all eating |                     |example OV
Q1|2026-05-14 08:15|2.22|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q3|2026-05-14 08:30|0.2 |  |    |   | |    |    |   | |    |                          | |             |           |                     |example OV
Q5|2026-05-14 08:40|0.5 |  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q4|2026-05-14 08:55|2.23|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q6|2026-05-15 08:05|2.17|  |    |   | |    |    |   | |    |                          | |             |           |                     |example TM
Q1|2026-05-15 08:15|2.22|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example TM
Q3|2026-05-15 08:30|0.2 |  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example TM
Q5|2026-05-15 08:40|0.5 |  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example TM
Q4|2026-05-15 08:50|2.22|  |    |   | |    |    |   | |    |                          | |             |           |                     |example TM
Q2|2026-05-15 18:00|<0.02| |    |   | |25.2|33  |8.1|0|L-18|4 flame angelfish         | |             |           |baseline, before any copper|example JK
Q2|2026-05-16 08:00|    |  |    |2.2| |    |    |   | |    |                          | |             |           |first of eight doses |example OV
Q6|2026-05-16 08:10|2.17|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q1|2026-05-16 08:20|2.21|  |    |   | |    |    |   | |    |                          | |             |           |                     |example OV
Q3|2026-05-16 08:30|0.19|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q4|2026-05-16 08:50|2.22|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q2|2026-05-16 20:00|0.06|  |    |2.2| |    |    |   | |    |                          | |             |all eating |                     |example JK
Q2|2026-05-17 08:00|0.12|  |    |2.2| |    |    |   | |    |                          | |             |           |                     |example OV
Q6|2026-05-17 08:10|2.16|  |    |   | |25.3|33.1|8.1|0|    |                          | |             |all eating |day 14               |example OV
Q1|2026-05-17 08:20|2.21|  |    |   |4|    |    |   | |    |                          | |             |all eating |                     |example OV
Q3|2026-05-17 08:30|0.19|  |    |   | |    |    |   | |    |                          | |             |           |                     |example OV
Q4|2026-05-17 08:50|2.21|  |    |   | |    |    |   | |    |                          | |             |           |                     |example OV
Q3|2026-05-17 17:00|    |32|    |   | |    |    |   | |    |                          | |             |           |copper for the new water forgotten|example JK
Q2|2026-05-17 20:00|0.18|  |    |2.2| |    |    |   | |    |                          | |             |all eating |                     |example JK
Q4|2026-05-17 20:40|    |  |    |2.5| |    |    |   | |    |                          | |             |           |                     |example JK
Q4|2026-05-17 21:10|    |  |    |2.5| |    |    |   | |    |                          | |             |           |evening dose         |example TM
Q2|2026-05-18 08:00|0.24|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q6|2026-05-18 08:10|2.16|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q1|2026-05-18 08:20|2.2 |  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q3|2026-05-18 08:30|0.15|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
Q4|2026-05-18 08:50|2.63|  |    |   | |    |    |   | |    |                          | |             |all eating |                     |example OV
`;

export const shopLogRows = rowsOf(kept);
