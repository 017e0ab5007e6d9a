import { FunctionType, type IFunctionInfo } from '@univerjs/preset-sheets-core';
import { cellName, type FunctionEntry } from '../calls/functionCatalogue.js';

/** What autocomplete and argument help show, in the order of names, from the same metadata as in the spreadsheet program. */
export function functionDescriptions(entries: readonly FunctionEntry[]): IFunctionInfo[] {
  const byName = [...entries].sort((a, b) => (a.id < b.id ? -1 : 1));
  return byName.map((entry) => ({
    functionName: cellName(entry),
    functionType: FunctionType.User,
    description: entry.description ?? '',
    abstract: entry.description ?? '',
    functionParameter: entry.parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description ?? '',
      example: parameter.name,
      require: parameter.optional === true ? 0 : 1,
      repeat: 0,
    })),
  }));
}
