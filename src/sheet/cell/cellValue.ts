/** What one cell holds when a host hands it to a function or shows it. */
export type CellValue = number | string | boolean | null | CellError;

/** An error cell, in the shape hosts use for parameters of type `any`. */
export interface CellError {
  readonly type: 'Error';
  readonly basicValue: string;
}

/** One argument as the formula gave it: a value, or a range as an array of rows. `undefined` is an argument left out. */
export type Given = CellValue | readonly (readonly CellValue[])[] | undefined;

export function isRange(given: Given): given is readonly (readonly CellValue[])[] {
  return Array.isArray(given);
}

export function isCellError(value: unknown): value is CellError {
  return (
    typeof value === 'object' && value !== null && 'type' in value && value.type === 'Error' && 'basicValue' in value
  );
}

export function errorCell(code: string): CellError {
  return { type: 'Error', basicValue: code };
}
