import { FunctionType, type IFunctionInfo } from '@univerjs/preset-sheets-core';
import { cellName, type FunctionEntry } from '../host/functionCatalogue.js';

/** What autocomplete and argument help show, from the same metadata as in the spreadsheet program. */
export function functionDescriptions(entries: readonly FunctionEntry[]): IFunctionInfo[] {
  return entries.map((entry) => ({
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
