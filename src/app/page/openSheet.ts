import englishTexts from '@univerjs/preset-sheets-core/locales/en-US';
import { LocaleType, LogLevel, Univer } from '@univerjs/core';
import { FUniver } from '@univerjs/core/lib/facade';
import { FunctionType, type IFunctionInfo, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import { fitWrappedRows } from './fitWrappedRows.js';
import { formulaExecutors } from '../calls/formulaExecutors.js';
import type { BundledFunction } from '../calls/bundledFunction.js';
import type { Refusals } from '../calls/refusals.js';
import { countBrackets, showOverflow } from './gridCorrections.js';
import { showTimesInTables } from './showTimesInTables.js';
import { cellName, type FunctionEntry } from '../calls/functionCatalogue.js';

interface SheetParts {
  readonly container: HTMLElement;
  readonly bundle: readonly BundledFunction[];
  readonly refusals: Refusals;
}

/** The opened sheet: its scripting interface, and the component itself for what that does not reach. */
export interface OpenedSheet {
  readonly univer: Univer;
  readonly api: FUniver;
}

/** Puts the sheet component with our functions into the page; its workbook is empty. */
export function openSheet({ container, bundle, refusals }: SheetParts): OpenedSheet {
  showOverflow();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: englishTexts },
    logLevel: LogLevel.ERROR,
  });
  const preset = UniverSheetsCorePreset({
    container,
    toolbar: true,
    ribbonType: 'simple',
    contextMenu: true,
    sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    footer: { statisticBar: true, menus: false },
    formula: {
      function: formulaExecutors(bundle, refusals),
      description: functionDescriptions(bundle.map(({ entry }) => entry)),
      initialFormulaComputing: 0,
    },
  });
  for (const plugin of preset.plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const api = FUniver.newAPI(univer);
  // The formula engine starts with the first workbook; a file takes its place.
  api.createWorkbook({});
  api.getFormula().calculationStart(() => refusals.startRun());
  api.getFormula().calculationResultApplied(() => fitWrappedRows(univer));
  showTimesInTables(univer);
  countBrackets(univer);
  return { univer, api };
}

/** What autocomplete and argument help show, in the order of names, from the same metadata as in the spreadsheet program. */
function functionDescriptions(entries: readonly FunctionEntry[]): IFunctionInfo[] {
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
