// The door of the sheet floor: files of cells and formulas. Other floors import from here and from nowhere else.
export { addressOf, addressRange } from './address/addressOf.js';
export { type CellRange, cellRange } from './address/cellRange.js';
export type { Book, BookCell, BookSheet, BookTable } from './book/book.js';
export type { BorderLine, CellLook, LineKind } from './book/cellLook.js';
export { isDateFormat } from './book/isDateFormat.js';
export { readBook } from './read/readBook.js';
export type { LineStyle } from './book/sheetLayout.js';
export { storableValue } from './cell/storableValue.js';
export { type CellError, type CellValue, errorCell, type Given, isCellError, isRange } from './cell/cellValue.js';
export { errorCode, type ErrorCode } from './cell/errorCode.js';
export type { CsvOptions } from './csv/csvOptions.js';
export { csvText } from './csv/csvText.js';
export { readCsv } from './csv/readCsv.js';
export { callsOutside } from './formula/functionName.js';
export { formulaAsStored } from './formula/formulaAsStored.js';
export { formulaAsTyped } from './formula/formulaAsTyped.js';
export {
  type EnteredFormula,
  entered,
  type StoredFormula,
  type TypedFormula,
  withoutEquals,
} from './cell/formulaText.js';
export { type Answer, type OutsideFunctions, type OutsideNames } from './formula/outsideFunctions.js';
export { plainReferences } from './formula/plainReferences.js';
export type { CellWrite } from './patch/cellWrite.js';
export { patchOds } from './patch/patchOds.js';
export { patchXlsx } from './patch/patchXlsx.js';
export type { CellAnswer } from './recalc/cellAnswers.js';
export type { CellChange } from './recalc/plannedWrites.js';
export { evaluatedBook } from './recalc/evaluatedBook.js';
export { looseAnswer } from './run/looseAnswer.js';
export { recalculated } from './recalc/recalculated.js';
export { FileProblem } from './zip/fileProblem.js';
export { partOf } from './zip/partOf.js';
export { zipEntries } from './zip/zipEntries.js';
export { zipWith } from './zip/zipWith.js';
