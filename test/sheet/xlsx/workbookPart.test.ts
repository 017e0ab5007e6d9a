import { workbookPart } from '../../../src/sheet/xlsx/workbookPart';
import { packageParts } from '../../../src/sheet/zip/packageParts';
import { zipEntries } from '../../../src/sheet/zip/zipEntries';
import { xlsxOf } from '../book/xlsxOf';
import { refusal } from '../zip/refusal';

describe('workbookPart', () => {
  const read = (bytes: Uint8Array): ReturnType<typeof workbookPart> =>
    workbookPart(packageParts(bytes, zipEntries(bytes)));

  it.each([true, false])('gives each sheet its part (absolute targets: %s)', (absolute) => {
    const bytes = xlsxOf({ sheets: { Log: '', __proto__x: '', 'Card &amp; more': '' }, absolute });
    const { sheets } = read(bytes);
    expect(sheets.map(({ name, part }) => [name, part])).toEqual([
      ['Log', 'xl/worksheets/sheet1.xml'],
      ['__proto__x', 'xl/worksheets/sheet2.xml'],
      ['Card & more', 'xl/worksheets/sheet3.xml'],
    ]);
    const entries = zipEntries(bytes).map((entry) => entry.name);
    for (const { part } of sheets) expect(entries).toContain(part);
  });

  it('refuses a file without the list of its sheets', () => {
    const parts = { '_rels/.rels': '<Relationships/>', 'xl/workbook.xml': '' };
    expect(refusal(() => read(xlsxOf({ sheets: { Log: '' }, parts })))).toContain('well-formed');
  });
});
