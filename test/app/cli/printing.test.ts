import { asOfOption } from '../../../src/app/cli/options.js';
import { oneLine, printable } from '../../../src/app/cli/printable.js';
import { isoFromSerial } from '../../../src/engine/index.js';
import { cellText, textTable } from '../../../src/app/cli/textTable.js';
import { wallClock } from '../../../src/app/cli/wallClock.js';

describe('printable', () => {
  it('lets nothing of a file move the cursor, colour the screen or turn the line round', () => {
    const hostile = 'Tank\u001b[2J\u001b]0;title\u0007\u009b31m\r\u202eevil\u2066';
    expect(printable(hostile)).toBe('Tank\ufffd[2J\ufffd]0;title\ufffd\ufffd31m\ufffd\ufffdevil\ufffd');
    expect(printable('2,05 µg/L · 25 °C – Zoë, 水槽')).toBe('2,05 µg/L · 25 °C – Zoë, 水槽');
  });
});

describe('oneLine', () => {
  it('shows a formula that somebody broke into lines on one', () => {
    expect(oneLine('QT.BAND( \r\n  "amine"\n)\u001b')).toBe('QT.BAND( "amine" )\ufffd');
  });
});

describe('cellText', () => {
  it('writes numbers with all their digits, truths, errors and nothing', () => {
    expect(cellText(1 / 3, false)).toBe('0.3333333333333333');
    expect(cellText(46_082.5, true)).toBe('2026-03-01 12:00');
    expect(cellText(true, false)).toBe('TRUE');
    expect(cellText(null, false)).toBe('');
    expect(cellText({ type: 'Error', basicValue: '#N/A' }, false)).toBe('#N/A');
    expect(cellText('a\tb\nc', false)).toBe('a b c');
  });
});

describe('textTable', () => {
  const rows = [
    ['From', 'Days', 'Enough'],
    [46_082, 12.25, 'no'],
    [46_100.5, 3, 'running'],
  ];

  it('separates cells by tabs for another program, times as they stand', () => {
    expect(textTable(rows, { id: 'HOLDS', aligned: false })).toBe(
      'From\tDays\tEnough\n46082\t12.25\tno\n46100.5\t3\trunning',
    );
  });

  it('aligns columns for people, numbers to the right, times as dates', () => {
    expect(textTable(rows, { id: 'HOLDS', aligned: true }).split('\n')).toEqual([
      'From               Days  Enough',
      '2026-03-01 00:00  12.25  no',
      '2026-03-19 12:00      3  running',
    ]);
  });
});

describe('asOfOption', () => {
  const moment = (text: string): unknown => asOfOption().parseArg?.(text, undefined);

  it('reads a date, a date and time, a serial day', () => {
    expect(moment('2026-03-01')).toBe(46_082);
    expect(moment('2026-03-01 12:00')).toBe(46_082.5);
    expect(moment('46082.5')).toBe(46_082.5);
  });

  it('says what is wrong with another text', () => {
    expect(() => moment('yesterday')).toThrow(/^--as-of is "yesterday"; write a date/);
  });
});

describe('wallClock', () => {
  it('is the clock on the wall of the machine, not that of Greenwich', () => {
    const moment = new Date(2026, 2, 1, 8, 30, 0);
    expect(isoFromSerial(wallClock(moment))).toBe('2026-03-01 08:30');
  });
});
