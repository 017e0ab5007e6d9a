import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { utils, write } from '@e965/xlsx';
import { auditBook } from '../../src/app/logs/auditBook.js';
import { readWhole } from '../../src/app/cli/files/readWhole.js';
import type { Book } from '../../src/sheet/book/book.js';
import { readBook } from '../../src/sheet/read/readBook.js';
import type { Bench } from './benches.js';
import { keeperLog } from './logBenches.js';

/** A folder of workbooks, each a log of one treatment and its card, audited; the baseline only reads them. */
export function folderBench(workbooks: number): Bench {
  return {
    name: `audit of ${workbooks} workbooks, against reading`,
    limit: 1.5,
    measuring: { runs: 7, warmUps: 2, collects: false },
    prepare: () => {
      const folder = mkdtempSync(join(tmpdir(), 'lazaret-bench-'));
      for (let i = 0; i < workbooks; i++) writeFileSync(join(folder, `tank ${i}.xlsx`), workbook(60 + (i % 4) * 30));
      const read = (): Book[] => readdirSync(folder).map((name) => readBook(readWhole(join(folder, name)), name));
      return {
        run: () => read().map((book) => auditBook(book, {})),
        baseline: read,
        holds: (answer) =>
          Array.isArray(answer) &&
          answer.length === workbooks &&
          answer.every((audits: ReturnType<typeof auditBook>) => audits[0]?.findings[0]?.severity === 'verdict'),
      };
    },
  };
}

function workbook(rows: number): Uint8Array {
  const book = utils.book_new();
  utils.book_append_sheet(book, utils.aoa_to_sheet(keeperLog(rows)), 'Log');
  const card = [
    ['Volume', 200],
    ['Form', 'chelated'],
    ['Strength', '10 mg/mL'],
    ['Days', 30],
  ];
  utils.book_append_sheet(book, utils.aoa_to_sheet(card), 'Card');
  return new Uint8Array(write(book, { type: 'array', bookType: 'xlsx', compression: true }) as ArrayBuffer);
}
