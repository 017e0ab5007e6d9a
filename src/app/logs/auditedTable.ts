import { auditTable, type Table } from '../../engine/index.js';
import type { Audited } from './audited.js';
import { findingsInSheet } from './findingsInSheet.js';

/** The table of an audit with the rows of the sheet: Severity, When, Row, Finding, Why, Source. */
export function auditedTable(audited: Audited): Table {
  return auditTable(findingsInSheet(audited));
}
