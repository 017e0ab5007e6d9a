import type { Card } from '../log/card.js';
import type { CardEntry } from '../log/cardRead/cardEntries.js';
import type { CardName } from '../log/cardRead/cardNames.js';
import { columnsOf, type Table, type TableCell } from '../result/table.js';
import { isBlank } from '../units/cell.js';
import { shown, shownNumber } from '../units/shown.js';

export const cardColumns = columnsOf({ Name: 'text', Value: 'mixed', Unit: 'text', 'Read as': 'text' });

type ValueAndUnit = readonly [TableCell, string];

/** How each row of a card was understood, as CARD spills it. */
export function cardTable(entries: readonly CardEntry[], card: Card): Table {
  return {
    columns: cardColumns,
    rows: entries.map(({ written, name, value }) => {
      if (name === null) return [written, isBlank(value) ? '' : shown(value).replace(/"/g, ''), '', 'unknown'];
      const [read, unit] = isBlank(value) ? ['', ''] : valueOf(name, card, shown(value).replace(/"/g, ''));
      return [written, read, unit, name === 'band' ? 'form or band' : name];
    }),
  };
}

function valueOf(name: CardName, card: Card, written: string): ValueAndUnit {
  return values[name](card, written);
}

const values: Readonly<Record<CardName, (card: Card, written: string) => ValueAndUnit>> = {
  system: (_, written) => [written, ''],
  volume: ({ volume }) => [volume, 'L'],
  band: (card) => [bandText(card), card.form === null ? 'mg/L' : ''],
  strength: ({ strength }) => [strength ?? '', 'mg/mL'],
  aim: ({ aim }) => [aim, 'mg/L'],
  'meter accuracy': ({ meterAccuracy }) => [meterAccuracy ?? '', 'mg/L'],
  'meter percent': ({ meterPercent }) => [meterPercent * 100, '%'],
  'meter from': ({ meterFrom }) => [meterFrom ?? '', 'mg/L'],
  reads: ({ reads }) => [reads ?? '', ''],
  days: (card) => [card.days, 'days'],
  pace: ({ pace }) => (typeof pace === 'number' ? [pace, 'days'] : [pace, '']),
  'longest gap': ({ longestGap }) => (longestGap === Infinity ? ['none', ''] : [longestGap * 24, 'h']),
  fish: ({ fish }) => [fish.join(', '), ''],
  start: ({ start }) => [start ?? '', ''],
  arrived: ({ arrived }) => [arrived ?? '', ''],
  temperature: ({ temperature }) => [temperature ?? '', '°C'],
  salinity: ({ salinity }) => [salinity ?? '', 'g/kg'],
  pH: (card) => [card.pH ?? '', ''],
  disease: ({ disease }) => [disease, ''],
  confirm: ({ confirm }) => [confirm, ''],
  newcomers: ({ newcomers }) => [newcomers, ''],
  gallon: ({ gallon }) => [gallon, ''],
  'meter to': ({ meterTo }) => [meterTo ?? '', 'mg/L'],
  smallest: ({ smallest }) => [smallest ?? '', 'mL'],
  'doses a day': ({ dosesADay }) => [dosesADay ?? '', ''],
  'moved in': ({ movedIn }) => [movedIn ?? '', ''],
  'accept copper for': ({ acceptCopperFor }) => [acceptCopperFor.join(', '), ''],
  'shares water with': ({ sharesWaterWith }) => [sharesWaterWith.join(', '), ''],
  'bottle mL': ({ bottle }) => [bottle ?? '', 'mL'],
  'bottle price': ({ bottlePrice }) => [bottlePrice ?? '', ''],
  'tests left': ({ testsLeft }) => [testsLeft ?? '', ''],
  'test price': ({ testPrice }) => [testPrice ?? '', ''],
};

function bandText({ form, band }: Card): TableCell {
  if (form !== null) return form;
  return band.high === Infinity ? band.low : `${shownNumber(band.low)}–${shownNumber(band.high)}`;
}
