import { zipEntries } from '../../../src/sheet/zip/zipEntries';
import { packageParts } from '../../../src/sheet/zip/packageParts';
import { workbookPart } from '../../../src/sheet/xlsx/workbookPart';

/** The part of an xlsx file that holds each sheet, by the name of the sheet. */
export function sheetPartNames(bytes: Uint8Array): Map<string, string> {
  const entries = zipEntries(bytes);
  const names = new Map(entries.map((entry) => [entry.name.toLowerCase(), entry.name]));
  const { sheets } = workbookPart(packageParts(bytes, entries));
  return new Map(sheets.map((sheet) => [sheet.name, names.get(sheet.part.toLowerCase()) ?? sheet.part]));
}
