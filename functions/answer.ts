import { isNotYet, message, type Problem, type Result, type Table, type TableCell } from '../src/index.js';

/** The most a host delivers to the sheet. [characters of JSON] */
const largestTable = 2_000_000;

/** One number for a cell, or the host's error with the reason. */
export function numberAnswer(result: Result<number, Problem>): number {
  const value = valueOf(result);
  return Number.isFinite(value) ? value : throwProblem({ code: 'answer-too-large' });
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

/** A heading row and its rows; one row that says none where there is nothing to list. */
export function tableAnswer(result: Result<Table, Problem>): TableCell[][] {
  const { heading, rows } = valueOf(result);
  const width = heading.length;
  const listed = rows.length > 0 ? rows : [['none', ...Array<string>(width - 1).fill('')]];
  const answer = [[...heading], ...(listed as TableCell[][])];
  let characters = 0;
  for (const row of answer) {
    if (row.length !== width) throw new Error(`a row of ${row.length} cells under ${width} headings`);
    for (const cell of row) {
      if (typeof cell === 'number' && !Number.isFinite(cell)) return throwProblem({ code: 'answer-too-large' });
      characters += typeof cell === 'string' ? writtenLength(cell) : String(cell).length + 1;
    }
    characters += 2;
  }
  return characters <= largestTable ? answer : throwProblem({ code: 'table-too-large', rows: rows.length });
}

/** Length of a text in JSON, its quotes and comma included; what is escaped or beyond ASCII is counted at its longest. */
function writtenLength(text: string): number {
  let length = 3;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    length += code < 32 ? 6 : code === 34 || code === 92 ? 2 : code > 127 ? 3 : 1;
  }
  return length;
}

function valueOf<T>(result: Result<T, Problem>): T {
  return result.ok ? result.value : throwProblem(result.problem);
}

/** Only #VALUE! and #N/A carry a message to the cell. */
function throwProblem(problem: Problem): never {
  const { ErrorCode } = CustomFunctions;
  const code = isNotYet(problem) ? ErrorCode.notAvailable : ErrorCode.invalidValue;
  throw new CustomFunctions.Error(code, message(problem));
}
