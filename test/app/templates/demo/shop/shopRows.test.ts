import { copperForms } from '../../../../../src/engine/dose/forms.js';
import { serialOf } from '../../../../../src/app/templates/sheets/rowsOf.js';
import { shopMoment, shopRows } from '../../../../../src/app/templates/demo/shop/shopRows.js';
import { shopSystems } from '../../../../../src/app/templates/demo/shop/shopSystems.js';
import { simulatedRows, type ShopRow } from '../../../../../src/app/templates/demo/shop/simulatedRows.js';

const rowsOf = (name: string): readonly ShopRow[] => shopRows.filter(({ system }) => system === name);
const levels = (rows: readonly ShopRow[]): number[] =>
  rows.flatMap(({ copper }) => (typeof copper === 'number' ? [copper] : []));

describe('shopRows', () => {
  it('are some 1,500 rows of twelve systems, in time order, up to the moment', () => {
    expect(shopRows.length).toBeGreaterThan(1400);
    expect(shopRows.length).toBeLessThan(1600);
    expect(new Set(shopRows.map(({ system }) => system))).toEqual(new Set(shopSystems.map(({ name }) => name)));
    expect(shopSystems).toHaveLength(12);
    const times = shopRows.map(({ when }) => when);
    expect(times.filter((when, at) => when < (times[at - 1] ?? 0))).toEqual([]);
    expect(times.filter((when) => when > shopMoment)).toEqual([]);
  });

  it('fill every column, by three people', () => {
    const filled = (key: keyof ShopRow): number => shopRows.filter((row) => row[key] !== undefined).length;
    expect(filled('copper')).toBeGreaterThan(500);
    expect(filled('topOff')).toBeGreaterThan(200);
    for (const key of ['dose', 'change', 'salinity', 'temperature', 'fishIn', 'eating', 'note'] as const)
      expect([key, filled(key) >= 12]).toEqual([key, true]);
    for (const key of ['fishOut', 'dead'] as const) expect([key, filled(key)]).toEqual([key, 1]);
    expect(new Set(shopRows.map(({ by }) => by)).size).toBe(3);
  });

  it('stand in the band in the hold, but for what is planted', () => {
    const strays = shopSystems.flatMap(({ name, form, raisingDays, start }) => {
      const { low, high } = copperForms[form].band;
      const held = rowsOf(name).filter(({ when }) => when > serialOf(start) + raisingDays + 0.5);
      return levels(held).some((level) => level < low || level > high) ? [name] : [];
    });
    expect(strays).toEqual(['A2', 'A4', 'B1', 'B2']);
    expect(rowsOf('C2').filter(({ copper }) => typeof copper === 'string')).toHaveLength(1);
  });
});

describe('simulatedRows', () => {
  const [system] = shopSystems;
  if (system === undefined) throw new Error('no system');

  it('are the same for the same seed, and others for another', () => {
    expect(simulatedRows(system, 7, shopMoment)).toEqual(simulatedRows(system, 7, shopMoment));
    expect(levels(simulatedRows(system, 8, shopMoment))).not.toEqual(levels(simulatedRows(system, 7, shopMoment)));
  });

  it('have a baseline, fish, and times to the minute', () => {
    const rows = simulatedRows(system, 7, shopMoment);
    expect(rows[0]).toMatchObject({ when: serialOf(system.start), fishIn: system.fish });
    expect(levels(rows)[0]).toBeLessThan(0.1);
    const minutes = rows.map(({ when }) => when * 1440);
    expect(minutes.filter((minute) => Math.abs(minute - Math.round(minute)) > 1e-4)).toEqual([]);
  });
});
