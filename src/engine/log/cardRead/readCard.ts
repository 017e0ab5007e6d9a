import { copperForms } from '../../dose/forms.js';
import { paceIn } from '../../dose/paceIn.js';
import type { Problem } from '../../result/problem.js';
import { salinityFromSpecificGravity } from '../../seawater/salinityFromSpecificGravity.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../../units/cell.js';
import {
  celsius,
  copperMgPerLitre,
  days,
  fraction,
  litres,
  specificGravity,
  type PracticalSalinity,
} from '../../units/quantity.js';
import { choiceIn, confirmIn, wholeNumberIn } from '../../units/readers/choiceReaders.js';
import { meterPercentIn } from '../../units/readers/percentReaders.js';
import {
  highestLevel,
  quantityReader,
  accuracyIn,
  daysIn,
  dosedVolumeIn,
  salinityIn,
  strengthIn,
  temperatureIn,
  volumeIn,
  gapIn,
  timeIn,
} from '../../units/readers/quantityReaders.js';
import { argumentsIn } from '../../units/readers/argumentsIn.js';
import { unlessBlankOrZero, type Reader } from '../../units/readers/reader.js';
import { shown } from '../../units/shown.js';
import { type Card, usualHoldDays, usualLongestGapDays } from '../card.js';
import { columnNumber } from '../table/columnNumbers.js';
import { cardBand } from './cardBand.js';
import type { CardName } from './cardNames.js';
import { readerOn, shelfReaders } from './shelfReaders.js';

/** A card's values by their names, as `cardEntries` found them. */
type CardCells = ReadonlyMap<CardName, Cell>;

/** A card with its defaults; the volume and the form or band it cannot do without. A refusal calls it by its label. */
export function readCard(cells: CardCells, label = 'card'): Result<Card, Problem> {
  const cell = (name: CardName): Cell => cells.get(name) ?? null;
  const gallonIn = (given: Cell) => choiceIn(given, ['US', 'imperial'] as const);
  const gallon = unlessBlankOrZero(cell('gallon'), gallonIn, 'US' as const)(`${label} gallon`);
  if (!gallon.ok) return gallon;
  const missing = (['volume', 'band'] as const).find((name) => isBlank(cell(name)));
  if (missing !== undefined)
    return refuse({ code: 'card-without', card: label, name: missing === 'band' ? 'form or band' : missing });
  const band = cardBand(cell('band'), `${label} form or band`);
  if (!band.ok) return band;
  const disease = wordsIn(cell('disease'));
  const said = {
    ...band.value,
    gallon: gallon.value,
    fish: namesOn(cell('fish')),
    acceptCopperFor: namesOn(cell('accept copper for')),
    sharesWaterWith: namesOn(cell('shares water with')),
    disease,
  };
  const values = argumentsIn({ ...valueReaders({ cell, label, ...said }), ...shelfReaders(cell, label) });
  return values.ok ? ok({ ...values.value, ...said }) : values;
}

interface SaidOnCard {
  readonly cell: (name: CardName) => Cell;
  readonly label: string;
  readonly gallon: Card['gallon'];
  readonly form: Card['form'];
  readonly band: Card['band'];
  readonly disease: string;
}

function valueReaders({ cell, label, gallon, form, band, disease }: SaidOnCard) {
  const on = readerOn(cell, label);
  return {
    volume: () => volumeOn(cell('volume'), gallon, `${label} volume`),
    strength: on('strength', strengthIn, null),
    aim: on('aim', aimIn, usualAim({ form, band })),
    meterAccuracy: on('meter accuracy', accuracyIn, null),
    meterPercent: on('meter percent', meterPercentIn, fraction(0)),
    meterFrom: on('meter from', accuracyIn, null),
    reads: on('reads', (given) => choiceIn(given, ['free', 'total'] as const), null),
    days: on('days', daysIn, days(usualHoldDays)),
    pace: on('pace', paceIn, 'gradual' as const),
    longestGap: on('longest gap', gapIn, days(usualLongestGapDays)),
    start: on('start', timeIn, null),
    arrived: on('arrived', timeIn, null),
    temperature: on('temperature', temperatureIn, null),
    salinity: on('salinity', salinityOnCard, null),
    pH: on('pH', acidityIn, null),
    confirm: on('confirm', confirmIn, 1 as const),
    newcomers: on('newcomers', newcomersIn, disease === '' ? ('count on' as const) : ('restart' as const)),
    meterTo: on('meter to', aimIn, null),
    smallest: on('smallest', dosedVolumeIn, null),
    dosesADay: on('doses a day', dosesIn, null),
    movedIn: on('moved in', timeIn, null),
  };
}

/** In g/kg, or a specific gravity: no sea water has a salinity near 1. */
function salinityOnCard(cell: Cell): Reader<PracticalSalinity> {
  const bare = typeof cell === 'string' ? cell.replace(/\s*s\.?g\.?\s*$/i, '') : cell;
  return (field) => {
    const value = salinityIn(bare)(field);
    if (!value.ok || value.value < 0.99 || value.value > 1.04) return value;
    const water = { specificGravity: specificGravity(value.value), temperature: celsius(25), reference: celsius(25) };
    return salinityFromSpecificGravity(water);
  };
}

const aimIn = quantityReader('level', { above: 0, max: highestLevel }, copperMgPerLitre);

const dosesIn = (cell: Cell) => wholeNumberIn(cell, { min: 1, max: 24 });

const newcomersIn = (cell: Cell) => choiceIn(cell, ['count on', 'restart'] as const);

function namesOn(cell: Cell): readonly string[] {
  return wordsIn(cell)
    .split(/\s*[,;\n]\s*/)
    .filter((name) => name !== '');
}

function volumeOn(cell: Cell, gallon: Card['gallon'], field: string): Result<Card['volume'], Problem> {
  const inGallons = columnNumber(cell, { dimension: 'litres', limits: { above: 0 }, unit: null, gallon }, { field });
  return gallon === 'imperial' && inGallons.ok ? ok(litres(inGallons.value)) : volumeIn(cell)(field);
}

function usualAim({ form, band }: { form: Card['form']; band: Card['band'] }): Card['aim'] {
  if (form !== null) return copperForms[form].aim;
  return copperMgPerLitre(band.high === Infinity ? band.low * 1.1 : (band.low + band.high) / 2);
}

function acidityIn(cell: Cell): Reader<number> {
  return (field) =>
    columnNumber(cell, { dimension: 'plain', limits: { min: 4, max: 11 }, unit: null, gallon: 'US' }, { field });
}

function wordsIn(cell: Cell): string {
  if (typeof cell === 'string') return /^(?:none|no|-)$/i.test(cell.trim()) ? '' : cell.trim();
  return typeof cell === 'number' && cell !== 0 ? shown(cell) : '';
}
