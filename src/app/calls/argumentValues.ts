import { type CellError, type Given, isCellError, isRange } from '../../sheet/index.js';
import type { FunctionEntry, ParameterEntry } from './functionCatalogue.js';

/** The values a host passes for one call, or the error cell that answers it without calling. */
type ArgumentValues = { readonly values: unknown[] } | { readonly error: CellError } | { readonly miscounted: string };

/**
 * Arguments as hosts hand them over: an omitted one is null, a blank cell null, a range an array of rows; one cell given to
 * a range parameter is `[[v]]`, and a one-cell range given to a scalar parameter is that cell. Where the catalogue does not
 * accept error cells, the first one is the answer.
 */
export function argumentValues(entry: FunctionEntry, given: readonly Given[], allowErrors: boolean): ArgumentValues {
  const required = entry.parameters.filter((parameter) => parameter.optional !== true);
  if (given.length > entry.parameters.length) return { miscounted: miscount('at most', entry.parameters) };
  if (given.length < required.length) return { miscounted: miscount('at least', required) };
  if (!allowErrors) {
    const error = given.flatMap((one) => (isRange(one) ? one.flat() : [one])).find(isCellError);
    if (error !== undefined) return { error };
  }
  return { values: entry.parameters.map((parameter, i) => argumentValue(parameter, given[i])) };
}

function argumentValue(parameter: ParameterEntry, given: Given): unknown {
  if (given === undefined) return null;
  if (parameter.dimensionality === 'matrix') {
    if (isRange(given)) return given.map((row) => [...row]);
    return given === null ? null : [[given]];
  }
  if (!isRange(given)) return given;
  if (given.length === 1 && given[0]?.length === 1) return given[0][0] ?? null;
  return given.map((row) => [...row]);
}

function miscount(bound: 'at most' | 'at least', parameters: readonly ParameterEntry[]): string {
  if (parameters.length === 0) return 'takes no arguments';
  const names = parameters.map((parameter) => parameter.name).join(', ');
  return `takes ${bound} ${parameters.length} argument${parameters.length === 1 ? '' : 's'}: ${names}`;
}
