import type { AnswerKind, TableColumn } from '../result/table.js';
import { ammoniaChangeColumns, lossRateColumns } from './waterTables.js';
import { auditColumns } from './auditTable.js';
import { cardColumns } from './cardTable.js';
import { cautionsColumns } from './cautions.js';
import { deathsColumns } from './deathsTable.js';
import { doNowColumns } from './doNowTable.js';
import { doseSplitColumns, rampColumns, thinColumns } from './doseTables.js';
import { fishDaysColumns } from './fishDaysTable.js';
import { headingsColumns } from './headingsTable.js';
import { holdRowsColumns, holdsColumns } from './holdTables.js';
import { levelsColumns } from './levelsTable.js';
import { meterFitsColumns } from './meterFitsTable.js';
import { notesColumns } from './notesTable.js';
import { planColumns } from './planTable.js';
import { readyColumns } from './readyTable.js';
import { selfCheckColumns } from './selfCheckTable.js';
import { signsColumns, toleranceColumns, treatmentColumns } from './fishTables.js';
import { systemsColumns } from './systemsTable.js';

/** The columns of a function that gives a table; the kind of one that gives a value, or two side by side. */
type AnswerColumns = AnswerKind | readonly TableColumn[];

/** What each cell function gives. DOSESPLIT without a first time has `Hours`, a number, in place of `When`. */
export const answerColumns: Readonly<Record<string, AnswerColumns>> = {
  NETVOLUME: 'number',
  VOLUMEBYDOSE: 'number',
  STRENGTH: 'number',
  STOCKSTRENGTH: 'number',
  STOCKGRAMS: 'number',
  THIN: thinColumns,
  MGPERL: 'number',
  DOSE: 'number',
  RISE: 'number',
  DOSESPLIT: doseSplitColumns,
  RAMP: rampColumns,
  CHANGEDOSE: 'number',
  AFTERCHANGE: 'number',
  AFTEREVAPORATION: 'number',
  CHANGETOLOWER: 'number',
  CHANGESTOCLEAR: 'number',
  LOSSRATE: lossRateColumns,
  BAND: 'number',
  HOLDDAYS: 'number',
  HOLDSTART: 'time',
  HOLDENDS: 'time',
  HOLDROWS: holdRowsColumns,
  HOLDS: holdsColumns,
  TOLERANCE: toleranceColumns,
  TREATMENTFOR: treatmentColumns,
  FREEAMMONIA: 'number',
  AMMONIACHANGE: ammoniaChangeColumns,
  SALINITY: 'number',
  SPECIFICGRAVITY: 'number',
  SIGNS: signsColumns,
  PLAN: planColumns,
  OBSERVEUNTIL: 'time',
  HOLDCHANCE: 'share',
  AIM: 'number',
  METERFITS: meterFitsColumns,
  HEADINGS: headingsColumns,
  CARD: cardColumns,
  LEVELS: levelsColumns,
  AUDIT: auditColumns,
  DONOW: doNowColumns,
  READY: readyColumns,
  FISHDAYS: fishDaysColumns,
  DEATHS: deathsColumns,
  NOTES: notesColumns,
  SYSTEMS: systemsColumns,
  SELFCHECK: selfCheckColumns,
  CAUTIONS: cautionsColumns,
};

/**
 * What a cell of a function's answer holds: of a table under this heading, else in the one value. Undefined for a heading
 * or a function that is not known.
 */
export function answerKind(id: string, heading?: unknown): AnswerKind | undefined {
  const columns = answerColumns[id];
  if (columns === undefined || typeof columns === 'string') return columns;
  return columns.find((column) => column.heading === heading)?.kind;
}
