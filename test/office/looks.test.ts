import { readBook } from '../../src/sheet/read/readBook.js';
import { expectLooks, workbookWithLooks } from '../sheet/book/workbookWithLooks.js';
import { converted, whereOffice } from './whereOffice.js';

const looks = { looks: true } as const;

whereOffice('readBook with looks of LibreOffice', () => {
  jest.setTimeout(120_000);

  it.each(['xlsx', 'ods'])('reads those of exceljs after they became %s', async (to) => {
    expectLooks(readBook(converted(await workbookWithLooks(), { from: 'xlsx', to }), `log.${to}`, looks));
  });
});
