// What sheets are made of: other folders of templates import from here.
export { answerTable, answerTableColumns } from './answerTable.js';
export { bodies, type TableColumn } from './column.js';
export { form, type FormLine } from './form.js';
export { line, rows } from './line.js';
export type { Look } from './looks.js';
export type { ColumnTones } from './rowConditions.js';
export { sheetPlan, type SheetTerms } from './sheetPlan.js';
export { table, type TablePart } from './table.js';
export type { ChartPlan, Content, Part, Rule, SheetPlan, TemplatePlan, ToneRule } from './templatePlan.js';
export { templatePlanOf } from './templatePlanOf.js';
