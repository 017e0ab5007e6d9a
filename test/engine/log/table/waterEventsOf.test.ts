import { eventKinds } from '../../../../src/engine/log/waterEvents.js';
import { treatmentFrom } from '../../rules/treatmentFrom.js';

const kinds = Object.keys(eventKinds);
const card = 'volume | 200 L\nform | chelated\nstrength | 10';
const events = (log: string) => {
  const { count, kind, amount, detail, row } = treatmentFrom(log, card).events;
  return Array.from({ length: count }, (_, at) => [row[at], kinds[kind[at] ?? 0], amount[at], detail[at]]);
};

describe('waterEventsOf', () => {
  it('puts the reading of a row first, then the change, then the dose', () => {
    expect(events('When | Cu | WC L | Dose mL\n2026-03-01 08:00 | 2.2 | 20 | 5')).toEqual([
      [2, 'reading', 2.2, 2.2],
      [2, 'change', 20, 0],
      [2, 'dose', 5, 0],
    ]);
  });

  it('puts the reading where the row says it was taken', () => {
    const order = (note: string) =>
      events(`When | Cu | WC L | Dose mL | Note\n2026-03-01 08:00 | 2.2 | 20 | 5 | ${note}`).map(([, kind]) => kind);
    expect(order('read after dose')).toEqual(['change', 'dose', 'reading']);
    expect(order('read after WC')).toEqual(['change', 'reading', 'dose']);
  });

  it('takes shares of the volume as it is then', () => {
    expect(
      events('When | Cu | WC | Volume\n2026-03-01 08:00 | 2.2 | 25% | \n2026-03-02 08:00 | 2.2 | 25% | 100'),
    ).toEqual([
      [2, 'reading', 2.2, 2.2],
      [2, 'change', 50, 0],
      [3, 'volume', 100, 0],
      [3, 'reading', 2.2, 2.2],
      [3, 'change', 25, 0],
    ]);
  });

  it('does not count the dose of a matched change twice', () => {
    const log = (dose: number) => `When | Cu | WC L | Dose mL | Note\n2026-03-01 08:00 | 2.2 | 20 | ${dose} | premixed`;
    // 20 L × 2.2 mg/L ÷ 10 mg/mL = 4.4 mL match the new water.
    expect(events(log(4.5)).map(([, kind]) => kind)).toEqual(['reading', 'change']);
    expect(events(log(10)).map(([, kind]) => kind)).toEqual(['reading', 'change', 'dose']);
  });

  it('reads a log that is kept newest first from its end', () => {
    const log = 'When | Cu | Dose mL\n2026-03-02 | 2.2 | \n2026-03-01 | 2.1 | \n2026-03-01 | 1.6 | 10';
    expect(events(log).map(([row, kind]) => [row, kind])).toEqual([
      [4, 'reading'],
      [4, 'dose'],
      [3, 'reading'],
      [2, 'reading'],
    ]);
  });
});
