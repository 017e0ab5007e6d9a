import type { Audited } from '../../../src/app/logs/audited.js';
import { serialOf } from '../../../src/app/templates/sheets/rowsOf.js';
import type { Content } from '../../../src/app/templates/plan/templatePlan.js';
import { reportHtml } from '../../../src/app/report/reportHtml.js';
import type { ReportInput } from '../../../src/app/report/reportTitle.js';
import { pastTreatment, treatmentOfRows, type DemoTreatment } from '../plot/demoTreatments.js';

/** As it is found in a workbook, with rows above the log if wanted. */
export function auditedDemo(
  demo: DemoTreatment,
  sheet = 'Past log',
  system: string | null = 'Hospital tank 1',
  firstRow = 0,
): Audited {
  const { treatment, card, cardEntries, findings, rows, columns } = demo;
  const range = { firstRow, firstColumn: 0, lastRow: firstRow + rows - 1, lastColumn: columns - 1 };
  const log = { sheet, range, systems: [] };
  return { log, system, card, cardEntries, cardFrom: "'Past card'!A4:B14", treatment, findings };
}

export const made = serialOf('2026-02-20 09:15');

export function pastReport(more: Partial<ReportInput> = {}): string {
  return reportHtml({ audited: auditedDemo(pastTreatment()), file: 'quarantine.xlsx', asOf: null, made, ...more });
}

/** A log of which very much is found: 200 rows with deaths, unreadable cells and breaks. */
export function troubledReport(): { html: string; audited: Audited } {
  const rows: Content[][] = Array.from({ length: 400 }, (_, at) => {
    const copper = at % 6 === 3 ? 1.8 : at % 6 === 5 ? `LOW ${at}` : 2.2;
    return [46100 + at / 2, copper, at % 7 === 0 ? 3 : null, at % 9 === 0 ? 40 : null, at % 40 === 0 ? 3 : null];
  });
  const card: Content[][] = [
    ['Volume', '200 L'],
    ['Form', 'chelated'],
    ['Strength', '10 mg/mL'],
  ];
  const demo = treatmentOfRows([['When', 'Copper', 'Dose mL', 'Change L', 'Dead'], ...rows], card);
  const audited = auditedDemo(demo, 'Log', null);
  return { html: reportHtml({ audited, file: 'troubled.csv', asOf: null, made }), audited };
}
