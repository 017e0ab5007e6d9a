import type { FileKind } from './fileKind.js';

/** Why a file of this kind is not read, and what to do; undefined for those that are. */
export function refusalOf(kind: FileKind): string | undefined {
  switch (kind) {
    case 'zip':
    case 'text':
      return undefined;
    case 'empty':
      return 'The file is empty; save the workbook again.';
    case 'old':
      return 'The file is a workbook in the old binary format (.xls); open it in a spreadsheet program and save it as .xlsx.';
    case 'encrypted':
      return 'The file is protected by a password; open it in a spreadsheet program and save a copy without one as .xlsx.';
    case 'markup':
      return 'The file is a web page or other XML, whatever its name says; open it in a spreadsheet program and save it as .xlsx.';
    case 'workbook-xml':
      return 'The file is a workbook written as one XML text; open it in a spreadsheet program and save it as .xlsx.';
    case 'document':
      return 'The file is a document to be read or printed and has no cells; save the workbook it came from as .xlsx.';
    case 'packed':
      return 'The file is a packed archive; unpack it, and give the workbook in it as .xlsx, .ods or .csv.';
    case 'picture':
      return 'The file is a picture and has no cells; save the workbook it shows as .xlsx.';
    case 'binary':
      return 'The file is neither a workbook nor text; give it as .xlsx, .xlsm, .ods, .csv or .tsv.';
  }
}
