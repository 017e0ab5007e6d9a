import type { FishDays } from '../audit/fishDays.js';
import type { Departure, FishEvent } from '../audit/departFish.js';
import { columnsOf, type Table } from '../result/table.js';
import { shownNumber } from '../units/shown.js';
import { isoFromSerial } from '../../base/isoFromSerial.js';

export const fishDaysColumns = columnsOf({
  Fish: 'text',
  Arrived: 'time',
  'Hold days': 'number',
  'Ready on': 'time',
  Note: 'text',
});

interface Asked {
  readonly rows: readonly FishDays[];
  /** The days of the card. */
  readonly wanted: number;
}

/** The hold days of each fish, as FISHDAYS spills them. */
export function fishDaysTable({ rows, wanted }: Asked): Table {
  return {
    columns: fishDaysColumns,
    rows: rows.map((fish) => [
      fish.fish,
      fish.arrived ?? '',
      fish.holdDays ?? '',
      fish.readyOn ?? '',
      notes(fish, wanted).join('; '),
    ]),
  };
}

function notes(fish: FishDays, wanted: number): readonly string[] {
  const said: string[] = [];
  if (fish.arrived === null) said.push('no arrival, so no days: write when it came in');
  if (fish.restarted !== null) said.push(`counted from the newcomer of ${isoFromSerial(fish.restarted)}`);
  if (fish.enough && fish.readyOn !== null) said.push(`${shownNumber(wanted)} days reached`);
  else if (fish.left === null && fish.arrived !== null && fish.holdDays === null) said.push('no copper test yet');
  else if (fish.left === null && fish.arrived !== null && fish.readyOn === null) said.push('no hold is running');
  return [...said, ...fish.events.map((event) => eventText(event, fish.count))];
}

const words: Readonly<Record<Departure, string>> = {
  died: 'died',
  'dead on arrival': 'dead on arrival',
  moved: 'moved',
  sold: 'sold',
  out: 'out',
};

function eventText({ how, count, when, row, unclear }: FishEvent, of: number): string {
  const time = isoFromSerial(when);
  if (unclear) return `row ${row} does not say which fish ${how === 'died' ? 'died' : 'left'}`;
  return of === 1 && count === 1 ? `${words[how]} ${time}` : `${count} of ${of} ${words[how]} ${time}`;
}
