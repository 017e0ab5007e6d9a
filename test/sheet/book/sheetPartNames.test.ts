import { sheetPartNames } from '../../../src/sheet/book/sheetPartNames';
import { zipEntries } from '../../../src/sheet/zip/zipEntries';
import { refusal } from '../zip/refusal';
import { xlsxOf } from './xlsxOf';

describe('sheetPartNames', () => {
  it.each([true, false])(
    'gives the part of each sheet as it is named in the archive (absolute targets: %s)',
    (absolute) => {
      const bytes = xlsxOf({ sheets: { Log: '', __proto__x: '', 'Card &amp; more': '' }, absolute });
      const names = sheetPartNames(bytes);
      expect([...names]).toEqual([
        ['Log', 'xl/worksheets/sheet1.xml'],
        ['__proto__x', 'xl/worksheets/sheet2.xml'],
        ['Card & more', 'xl/worksheets/sheet3.xml'],
      ]);
      const entries = zipEntries(bytes).map((entry) => entry.name);
      for (const part of names.values()) expect(entries).toContain(part);
    },
  );

  it('refuses a file without the list of its sheets', () => {
    expect(
      refusal(() =>
        sheetPartNames(
          xlsxOf({ sheets: { Log: '' }, parts: { '_rels/.rels': '<Relationships/>', 'xl/workbook.xml': '' } }),
        ),
      ),
    ).toContain('well-formed');
  });
});
