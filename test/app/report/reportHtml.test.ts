import { JSDOM, VirtualConsole } from 'jsdom';
import { auditTable, cautions, holdSpans, isoFromSerial } from '../../../src/engine/index.js';
import { auditBook } from '../../../src/app/logs/auditBook.js';
import { reportHtml } from '../../../src/app/report/reportHtml.js';
import { bookOf } from '../logs/bookOf.js';
import { pastTreatment, shopTreatment, treatmentOfRows } from '../plot/demoTreatments.js';
import { auditedDemo, made, pastReport, troubledReport } from './demoReports.js';

// Its parser of styles does not know boxes in the margins of a page, and says so.
const opened = (html: string): Document => new JSDOM(html, { virtualConsole: new VirtualConsole() }).window.document;
const past = opened(pastReport());
const textOf = (page: Document, selector: string): string[] =>
  Array.from(page.querySelectorAll(selector), (element) => (element.textContent ?? '').replace(/\s+/g, ' ').trim());

/** The rows of findings as the table shows them. */
const findingRows = (page: Document): string[][] =>
  Array.from(page.querySelectorAll('.findings tbody tr'), (row) =>
    Array.from(row.children, (cell) => (cell.textContent ?? '').replace(/\s+/g, ' ').trim()),
  );

describe('reportHtml', () => {
  it('has the parts in their order, with headings that step down one at a time', () => {
    expect(textOf(past, 'h1')).toEqual(['Hospital tank 1']);
    expect(textOf(past, 'h2')).toEqual([
      'Verdict',
      'Treatment card',
      'Levels, holds, doses and changes',
      'Findings',
      'Holds',
      'Method and sources',
      'Cautions',
    ]);
    const levels = Array.from(past.querySelectorAll('h1, h2, h3'), ({ tagName }) => Number(tagName.slice(1)));
    expect(levels.every((level, at) => level - (levels[at - 1] ?? 0) <= 1)).toBe(true);
  });

  it('says of what, as of when and when it was made', () => {
    expect(textOf(past, '.facts dt')).toEqual(['File', 'Log', 'Card', 'As of', 'Report made']);
    expect(textOf(past, '.facts dd')).toEqual([
      'quarantine.xlsx',
      "'Past log'!A1:P57",
      "'Past card'!A4:B14",
      '2026-02-14 08:00, the last row',
      '2026-02-20 09:15',
    ]);
    const asOf = made - 10;
    const asked = reportHtml({ audited: auditedDemo(pastTreatment(asOf)), file: 'a.ods', asOf, made });
    expect(textOf(opened(asked), '.facts dd')[3]).toBe(isoFromSerial(asOf));
  });

  it('gives the verdict first, with the days held, the breaks and what was not tested', () => {
    expect(textOf(past, '.answer')).toEqual(['Not complete: no hold is running, and none was long enough.']);
    expect(textOf(past, '.figures div')).toEqual([
      'longest hold24.5 of 30 days',
      'breaks1 4.5 days lost',
      'untested stretches1 longest 86 h',
    ]);
    expect(textOf(past, '.found .severity')).toEqual(['8 dangers', '3 warnings', '7 notes']);
    expect(textOf(past, '.lines li')[1]).toContain('1 break (row 22), 4.5 days lost.');
  });

  it('lists every finding as the audit has it: severity, moment, row, words, reason, source', () => {
    const { findings } = pastTreatment();
    const wanted = auditTable(findings)
      .rows.filter(([severity]) => severity !== 'verdict')
      .map(([severity, when, row, finding, why]) => [
        severity,
        when === '' ? '' : isoFromSerial(Number(when)),
        String(row),
        finding,
        why,
      ]);
    expect(wanted.length).toBe(18);
    expect(findingRows(past).map((cells) => cells.slice(0, 5))).toEqual(wanted);
    for (const [, , , , , source = ''] of findingRows(past)) {
      const place = /\[(\d+)\]$/.exec(source)?.[1];
      const listed = past.querySelector(`#source-${place}`)?.textContent ?? '';
      expect(listed).toContain(source.replace(/ \[\d+\]$/, ''));
      expect(listed).toMatch(/\((read|read in a copy|worked out|from memory, not read|from experience)\)$/);
    }
  });

  it('names rows of the sheet in the cells and in the sentences where the log begins further down', () => {
    const audited = auditedDemo(pastTreatment(undefined, 11), 'Past log', 'x', 10);
    const page = opened(reportHtml({ audited, file: 'a.xlsx', asOf: null, made }));
    const rows = auditTable(audited.findings).rows.filter(([severity]) => severity !== 'verdict');
    expect(findingRows(page).map((cells) => [cells[2], cells[3]])).toEqual(
      rows.map(([, , row, text]) => [String(row), text]),
    );
    expect(findingRows(page)[0]?.slice(2, 4)).toEqual([
      '23',
      expect.stringContaining('in row 22 with no test between'),
    ]);
    expect(textOf(page, '.lines')[0]).toContain('1 break (row 32)');
    expect(textOf(page, '.holds tbody tr')[0]).toMatch(/below32$/);
    expect(page.querySelector('.wide svg')?.textContent).toContain('break: below, row 32');
  });

  it('lists the holds as HOLDS does', () => {
    const { treatment } = pastTreatment();
    const spans = holdSpans(treatment.trace, treatment.terms, 30);
    expect(textOf(past, '.holds tbody tr')).toEqual(
      spans.map(
        ({ from, to, days, row }) => `${isoFromSerial(from)}${isoFromSerial(to)}${days.toFixed(2)}nobelow${row}`,
      ),
    );
  });

  it('shows the card as it was written and understood, and says what was not used', () => {
    const rows = textOf(past, '.card tbody tr');
    expect(rows.length).toBe(11);
    expect(rows[1]).toBe('Net volume208.198 Lvolume');
    expect(rows.at(-1)).toBe('Standleft of the doornot used');
  });

  it('tells the plot in words, the method with the terms of the card, every caution, and who decides', () => {
    expect(textOf(past, 'figcaption')[0]).toContain('there are 44 readings');
    expect(textOf(past, 'figure svg desc')[0]).toBe(textOf(past, 'figcaption')[0]);
    expect(textOf(past, '.method')[0]).toContain(
      'low limit of 1.95 mg/L and lasts until a reading below it, or until nobody tested for more than 96 h',
    );
    expect(textOf(past, '.cautions li')).toEqual(cautions.map((each) => each));
    expect(textOf(past, '.decides')[0]).toBe(
      'An aquatic veterinarian decides. This report recomputes what the rows say; it cannot show what was not written down.',
    );
    const second = treatmentOfRows(
      [
        ['When', 'Copper'],
        [46100, 2.2],
      ],
      [
        ['Volume', 200],
        ['Band', 1.5],
        ['Confirm', 2],
        ['Longest gap', 'none'],
      ],
    );
    const page = opened(reportHtml({ audited: auditedDemo(second), file: 'a.csv', asOf: null, made }));
    expect(textOf(page, '.method p')[0]).toMatch(
      /^A hold begins with the second of two readings in a row at or above the low limit of 1\.5 mg\/L and lasts until a reading below it\. /,
    );
  });

  it('is one file that runs nothing and asks for nothing', () => {
    const html = pastReport();
    expect(html.startsWith('<!doctype html>\n<html lang="en">')).toBe(true);
    expect(past.title).toBe('Hospital tank 1: audit of a copper quarantine');
    expect(past.querySelector('meta[http-equiv]')?.getAttribute('content')).toBe(
      "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'",
    );
    expect(
      past.querySelectorAll('script, link, img, iframe, object, form, base, [src], [onload], [onclick]').length,
    ).toBe(0);
    const links = Array.from(past.querySelectorAll('[href]'), (element) => element.getAttribute('href') ?? '');
    expect(links.length).toBe(18);
    expect(links.every((link) => /^#source-\d+$/.test(link) && past.querySelector(link) !== null)).toBe(true);
    expect(html).not.toMatch(/url\(|@import|https?:/);
  });

  it('is made for whoever reads without seeing: tables, ids, pictures', () => {
    expect(Array.from(past.querySelectorAll('table')).every((table) => table.querySelector('caption') !== null)).toBe(
      true,
    );
    expect(
      Array.from(past.querySelectorAll('th')).every((head) => /^(col|row)$/.test(head.getAttribute('scope') ?? '')),
    ).toBe(true);
    const ids = Array.from(past.querySelectorAll('[id]'), ({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const picture of past.querySelectorAll('svg:not(svg svg)')) {
      const isDecor = picture.getAttribute('aria-hidden') === 'true';
      expect(isDecor || past.getElementById(picture.getAttribute('aria-labelledby') ?? '') !== null).toBe(true);
    }
    for (const part of past.querySelectorAll('section')) {
      expect(past.getElementById(part.getAttribute('aria-labelledby') ?? '')?.tagName).toBe('H2');
    }
    expect(past.querySelectorAll('main').length).toBe(1);
  });

  it('gives each severity a shape and a word, not a colour alone', () => {
    const shapes = new Map(
      Array.from(past.querySelectorAll('.findings .severity'), (mark) => [
        mark.textContent?.trim(),
        mark.querySelector('svg')?.innerHTML,
      ]),
    );
    expect([...shapes.keys()]).toEqual(['danger', 'warning', 'note']);
    expect(new Set(shapes.values()).size).toBe(3);
  });

  it('lists every one of very many findings and holds', () => {
    const { html, audited } = troubledReport();
    const page = opened(html);
    const told = audited.findings.filter(({ severity }) => severity !== 'verdict');
    expect(told.length).toBeGreaterThan(200);
    expect(findingRows(page).length).toBe(told.length);
    const holds = holdSpans(audited.treatment.trace, audited.treatment.terms, audited.card.days);
    expect(holds.length).toBeGreaterThan(60);
    expect(page.querySelectorAll('.holds tbody tr').length).toBe(holds.length);
    expect(textOf(page, 'h1')).toEqual(['troubled.csv']);
  });

  it('is made for a running hold, and for a log of which nothing is found', () => {
    const { treatment, card, cardEntries, rows, columns } = shopTreatment('A1');
    const audited = auditedDemo({ treatment, card, cardEntries, findings: [], rows, columns }, 'Shop log', 'A1');
    const page = opened(reportHtml({ audited, file: 'shop.xlsx', asOf: treatment.now, made }));
    expect(textOf(page, '.findings p')).toEqual(['No rule found anything else in the rows.']);
    expect(textOf(page, '.found .severity')).toEqual(['no dangers', 'no warnings', 'no notes']);
    const whole = opened(
      reportHtml({ audited: auditedDemo(shopTreatment('A1')), file: 'shop.xlsx', asOf: treatment.now, made }),
    );
    expect(textOf(whole, '.answer')[0]).toMatch(/^Running: /);
    expect(textOf(whole, '.figures dt')[0]).toBe('held so far');
  });

  it('gives the days of an open verdict with their condition', () => {
    const rows = [
      ['Volume', 200],
      ['Form', 'chelated'],
      [],
      ['When', 'Copper'],
      ...[2.1, 'LOW', 2.1, 2.1].map((v, at) => [46082 + at, v]),
    ];
    const [audited] = auditBook(bookOf({ L: rows }));
    if (audited === undefined) throw new Error('no log was found');
    const page = opened(reportHtml({ audited, file: 'open.xlsx', asOf: null, made }));
    expect(textOf(page, '.answer')[0]).toMatch(/^Open because of row 6/);
    expect(textOf(page, '.figures dt')[0]).toBe('held so far, if row 6 was in the band');
  });

  it('makes nothing of text from the file but text', () => {
    const bad = `<script>alert(1)</script>"'><img src=x onerror=alert(2)>`;
    const rows = [
      ['When', 'Copper', 'Fish in', 'Dead', 'Signs', 'Notes'],
      [46100, 2.2, `6 chromis ${bad}`, null, 'gasping <b>', `added ammonia binder ${bad}`],
      [46101, `2.2 ${bad}`, null, `2 ${bad}`, null, null],
      [46102, 2.2, '=HYPERLINK("javascript:alert(3)")', null, null, 'ammonia binder\u202e again'],
    ];
    const card = [
      ['Volume', 200],
      ['Form', 'chelated'],
      ['Fish', `${bad}, wrasse`],
      [`Stand ${bad}`, 'javascript:alert(4)'],
      ['=cmd', '=1+1'],
    ];
    const demo = treatmentOfRows(rows, card);
    const audited = { ...auditedDemo(demo, `Log ${bad}`, `Tank\u202e ${bad}`), cardFrom: `${bad}!A1` };
    const html = reportHtml({ audited, file: `${bad}.xlsx`, asOf: null, made });
    const page = opened(html);
    expect(page.querySelectorAll('script, img, b:not(.figures b), [onerror]').length).toBe(0);
    expect(textOf(page, 'h1')[0]).toBe(`Tank[U+202E] ${bad}`);
    expect(page.title).toContain(bad);
    expect(textOf(page, '.facts dd')[0]).toBe(`${bad}.xlsx`);
    expect(html).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
    expect(
      Array.from(page.querySelectorAll('[href]')).every((link) => link.getAttribute('href')?.startsWith('#source-')),
    ).toBe(true);
    expect(textOf(page, '.card tbody th')).toEqual(expect.arrayContaining(['“=cmd”', `Stand ${bad}`]));
    const cells = Array.from(page.querySelectorAll('td, th'), (cell) => cell.textContent ?? '');
    expect(cells.filter((cell) => /^[=+@]/.test(cell))).toEqual([]);
    const known = new Set([
      'HTML',
      'HEAD',
      'META',
      'TITLE',
      'STYLE',
      'BODY',
      'MAIN',
      'HEADER',
      'SECTION',
      'DIV',
      'P',
      'H1',
      'H2',
      'H3',
      'UL',
      'OL',
      'LI',
      'DL',
      'DT',
      'DD',
      'B',
      'BDI',
      'SPAN',
      'STRONG',
      'A',
      'TABLE',
      'CAPTION',
      'THEAD',
      'TBODY',
      'TR',
      'TH',
      'TD',
      'FIGURE',
      'FIGCAPTION',
    ]);
    const strange = Array.from(page.querySelectorAll('*')).filter(
      (element) => element.closest('svg') === null && !known.has(element.tagName),
    );
    expect(strange).toEqual([]);
  });
});
