import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { standInHost } from '../../host/standInHost.js';
import { bandIn, journalIn, tableText, typed } from './journal.js';

const host = standInHost();
const cases = readdirSync(resolve('test/engine/journal')).filter((name) =>
  existsSync(resolve('test/engine/journal', name, 'log.txt')),
);

/** All that the hold functions say of a log; an answer on file is changed by hand alone, after a look at every line. */
function report(folder: string, onFile: string): string {
  const [, rowsOnFile, holdsOnFile] = onFile.split('\n\n');
  const journal = journalIn(folder);
  const { settings, when, copper } = journal;
  const setting = (name: string): ReturnType<typeof typed> => typed(settings[name] ?? '');
  const band = bandIn(journal);
  const shared = [setting('arrived'), setting('longest gap'), setting('confirm')];
  const [rows, holds, days, start, ends] = [
    host.call('HOLDROWS', when, copper, band, null, ...shared),
    host.call('HOLDS', when, copper, band, setting('days'), ...shared),
    host.call('HOLDDAYS', when, copper, band, null, ...shared),
    host.call('HOLDSTART', when, copper, band, null, ...shared),
    host.call('HOLDENDS', when, copper, band, setting('days'), ...shared),
  ];
  const one = (title: string, answer: typeof days) => tableText([[title], [answer as number]]).split('\n')[1];
  return [
    journal.shows,
    tableText(rows, rowsOnFile),
    tableText(holds, holdsOnFile),
    [`days ${one('Days', days)}`, `began ${one('When', start)}`, `ends ${one('When', ends)}`].join('\n'),
    '',
  ]
    .join('\n\n')
    .trimEnd();
}

describe('whole logs', () => {
  it('are there', () => {
    expect(cases.length).toBeGreaterThanOrEqual(4);
  });

  it.each(cases)('%s has the answer on file', (folder) => {
    const onFile = readFileSync(resolve('test/engine/journal', folder, 'answer.txt'), 'utf8').trimEnd();
    expect(report(folder, onFile)).toBe(onFile);
  });
});
