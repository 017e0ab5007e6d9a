import type { Card } from '../log/card.js';
import type { CardEntry } from '../log/cardRead/cardEntries.js';
import type { CardName } from '../log/cardRead/cardNames.js';
import type { Table, TableCell } from '../result/table.js';
import { isBlank } from '../units/cell.js';
import { shown, shownNumber } from '../units/shown.js';

type ValueAndUnit = readonly [TableCell, string];

/** How each row of a card was understood, as CARD spills it. */
export function cardTable(entries: readonly CardEntry[], card: Card): Table {
  return {
    heading: ['Name', 'Value', 'Unit', 'Read as'],
    rows: entries.map(({ written, name, value }) => {
      if (name === null) return [written, isBlank(value) ? '' : shown(value).replace(/"/g, ''), '', 'unknown'];
      const [read, unit] = isBlank(value) ? ['', ''] : valueOf(name, card, shown(value).replace(/"/g, ''));
      return [written, read, unit, name === 'band' ? 'form or band' : name];
    }),
  };
}

function valueOf(name: CardName, card: Card, written: string): ValueAndUnit {
  switch (name) {
    case 'volume':
      return [card.volume, 'L'];
    case 'band':
      return [bandText(card), 'mg/L'];
    case 'strength':
      return [card.strength ?? '', 'mg/mL'];
    case 'aim':
      return [card.aim, 'mg/L'];
    case 'meter accuracy':
      return [card.meterAccuracy ?? '', 'mg/L'];
    case 'meter percent':
      return [card.meterPercent * 100, '%'];
    case 'meter from':
      return [card.meterFrom ?? '', 'mg/L'];
    case 'days':
      return [card.days, 'days'];
    case 'longest gap':
      return card.longestGap === Infinity ? ['none', ''] : [card.longestGap * 24, 'h'];
    case 'pace':
      return typeof card.pace === 'number' ? [card.pace, 'days'] : [card.pace, ''];
    case 'start':
      return [card.start ?? '', ''];
    case 'arrived':
      return [card.arrived ?? '', ''];
    case 'temperature':
      return [card.temperature ?? '', '°C'];
    case 'salinity':
      return [card.salinity ?? '', 'g/kg'];
    case 'pH':
      return [card.pH ?? '', ''];
    case 'confirm':
      return [card.confirm, ''];
    case 'reads':
      return [card.reads ?? '', ''];
    case 'newcomers':
      return [card.newcomers, ''];
    case 'gallon':
      return [card.gallon, ''];
    case 'fish':
      return [card.fish.join(', '), ''];
    case 'disease':
      return [card.disease, ''];
    case 'system':
      return [written, ''];
  }
}

function bandText({ form, band }: Card): TableCell {
  if (form !== null) return form;
  return band.high === Infinity ? band.low : `${shownNumber(band.low)}–${shownNumber(band.high)}`;
}
