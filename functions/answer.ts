import {
  isNotYet,
  message,
  refuse,
  type Problem,
  type Result,
  type Table,
  type TableCell,
} from '../src/engine/index.js';

/** The most a host delivers to the sheet. [characters of JSON] */
const largestTable = 2_000_000;

/** One number for a cell, or the host's error with the reason. */
export function numberAnswer(result: Result<number, Problem>): number {
  const value = valueOf(result);
  return Number.isFinite(value) ? value : refusal(refuse({ code: 'answer-too-large' }));
}

/** One number, or '' where there is nothing to say. */
export function numberOrNothingAnswer(result: Result<number | '', Problem>): number | string {
  return result.ok && result.value === '' ? '' : numberAnswer(result as Result<number, Problem>);
}

/** Two cells side by side, without a heading. */
export function pairAnswer(result: Result<readonly [number, number], Problem>): number[][] {
  const [first, second] = valueOf(result);
  return [[numberAnswer({ ok: true, value: first }), numberAnswer({ ok: true, value: second })]];
}

/** A heading row and its rows; a single row that says none where there is nothing to list. */
export function tableAnswer(result: Result<Table, Problem>): TableCell[][] {
  const { columns, rows } = valueOf(result);
  const width = columns.length;
  const listed = rows.length > 0 ? rows : [['none', ...Array<string>(width - 1).fill('')]];
  const answer = [columns.map(({ heading }) => heading), ...(listed as TableCell[][])];
  let most = 0;
  for (const row of answer) {
    if (row.length !== width) throw new Error(`a row of ${row.length} cells under ${width} headings`);
    for (const cell of row) {
      if (typeof cell === 'number' && !Number.isFinite(cell)) return refusal(refuse({ code: 'answer-too-large' }));
      most += typeof cell === 'string' ? cell.length * 6 + 3 : longestNumber;
    }
  }
  const fits = most <= largestTable || JSON.stringify(answer).length <= largestTable;
  return fits ? answer : refusal(refuse({ code: 'table-too-large', rows: rows.length }));
}

/** A number in JSON is never longer, its comma and brackets included; a character of a text never takes more than six. */
const longestNumber = 28;

function valueOf<T>(result: Result<T, Problem>): T {
  return result.ok ? result.value : refusal(result);
}

/** The reason why there is no answer, as the host's error: only #VALUE! and #N/A carry a sentence to the cell. */
export function refusal({ problem }: { readonly problem: Problem }): never {
  const { ErrorCode } = CustomFunctions;
  const code = isNotYet(problem) ? ErrorCode.notAvailable : ErrorCode.invalidValue;
  throw new CustomFunctions.Error(code, message(problem));
}
