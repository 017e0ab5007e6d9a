import { between, oneOf, round, wholeBetween } from './faultlessLog.js';
import type { FaultKind } from './faultKind.js';
import { heldRows, insertRow, isTested, readingOf, type KeeperLog, type KeeperRow } from './keeperLog.js';

const hour = 1 / 24;

/** Days of the hold, tests, fish and the other tests of the water. */
export const recordKinds: readonly FaultKind[] = [
  {
    name: 'untested for 72 to 96 h',
    codes: ['untested-stretch'],
    plant: (log, random) => untested(log, between(random, 73, 94) * hour, random),
  },
  {
    name: 'untested beyond the longest gap',
    codes: ['restarted-untested'],
    plant: (log, random) => untested(log, between(random, 98, 150) * hour, random),
  },
  {
    name: 'stopped short',
    codes: ['stopped-short'],
    plant: (log, random) => {
      const held = heldRows(log);
      const last = held.find(({ when }) => when - log.holdFrom > between(random, 14, 24));
      if (last === undefined) return null;
      cutAfter(log, last.when);
      const rows: KeeperRow[] = [];
      let level: number = last.copper;
      for (let day = 1; day <= 4; day++) {
        const change = { when: last.when + day - 0.6, change: round(log.treatment.volume * 0.5, 1) };
        level /= 2;
        rows.push(insertRow(log, change));
        rows.push(insertRow(log, { when: last.when + day, copper: readingOf(level) }));
      }
      return rows.slice(0, 4);
    },
  },
  {
    name: 'stopped short, as a row says',
    codes: ['stopped-short'],
    plant: (log, random) => {
      const last = heldRows(log).find(({ when }) => when - log.holdFrom > between(random, 8, 20));
      if (last === undefined) return null;
      cutAfter(log, last.when);
      const note = oneOf(random, ['carbon in, copper out', 'treatment stopped', 'removing copper', 'ended treatment']);
      return [insertRow(log, { when: last.when + 3 * hour, note })];
    },
  },
  {
    name: 'moved before 14 days',
    codes: ['moved-early'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(
        random,
        heldRows(log).filter(({ when }) => between(random, 4, 12.5) > when - log.holdFrom && when - log.holdFrom > 2),
      );
      row.fishOut = oneOf(random, ['2 clownfish', '1 firefish', 'all fish']);
      return [row];
    },
  },
  {
    name: 'a conditioner noted',
    codes: ['conditioner-noted'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(random, heldRows(log));
      row.note = oneOf(random, [
        'water conditioner added',
        'used dechlorinator in the new water',
        'ammonia binder, 5 mL',
        'dosed ammonia detoxifier',
        'dechlor added',
        'conditioner for the ammonia',
        'sodium thiosulfate in',
      ]);
      return [row];
    },
  },
  {
    name: 'salinity under 20',
    codes: ['low-salinity'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(random, heldRows(log));
      row.salinity = round(between(random, 12, 19.5), 1);
      return [row];
    },
  },
  {
    name: 'a fish that bears no copper',
    codes: ['copper-intolerant-fish'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(random, log.rows.filter(isTested).slice(0, 4));
      row.fishIn = oneOf(random, [
        'bamboo shark',
        'cleaner shrimp',
        'lined seahorse',
        'blue spotted stingray',
        'hermit crabs',
        'banded pipefish',
      ]);
      return [row];
    },
  },
  {
    name: 'deaths',
    codes: ['deaths'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(random, heldRows(log));
      row.dead = wholeBetween(random, 3, 4);
      return [row];
    },
  },
  {
    name: 'signs a second time',
    codes: ['second-signs'],
    plant: (log, random) => {
      const held = heldRows(log, 3, 1);
      const at = wholeBetween(random, 0, held.length - 12);
      if (held.length < 14) return null;
      for (const row of log.rows) delete row.signs;
      const say = (index: number, signs: string): KeeperRow => Object.assign(held[index] as KeeperRow, { signs });
      say(at, oneOf(random, ['not eating', 'breathing heavily', 'lethargic']));
      say(at + 2, oneOf(random, ['eating again', 'recovered, eating well']));
      return [
        say(at + oneOf(random, [4, 6, 10]), oneOf(random, ['lethargic', 'not eating', 'gasping at the surface'])),
      ];
    },
  },
  {
    name: 'un-ionised ammonia of 0.10 and more',
    codes: ['unionised-ammonia'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(random, heldRows(log));
      row.ammonia = round(between(random, 3, 5), 2);
      row.pH = 8.2;
      row.temperature = 26;
      row.salinity = 33;
      return [row];
    },
  },
  {
    name: 'a copper cell that cannot be read',
    codes: ['unreadable-copper'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(random, heldRows(log, 1, 2));
      row.copper = oneOf(random, ['LOW', 'ok', 'purple', '#N/A', 'forgot', 'see note']);
      return [row];
    },
  },
  {
    name: 'a newcomer',
    codes: ['newcomer'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(
        random,
        heldRows(log, 3, 3).filter(({ when }) => when - log.holdFrom < 27),
      );
      row.fishIn = oneOf(random, ['1 firefish', '2 ocellaris clownfish', 'royal gramma']);
      return [row];
    },
  },
  {
    name: 'three readings on the limit',
    codes: ['readings-on-limit'],
    plant: (log, random) => {
      if (log.form === 'sulfate') return null;
      const held = heldRows(log, 2, 3);
      const at = wholeBetween(random, 0, held.length - 3);
      const rows = held.slice(at, at + 3);
      for (const row of rows) row.copper = log.low;
      return rows;
    },
  },
  {
    name: 'a meter that cannot show the band',
    codes: ['meter-cannot-show'],
    plant: (log, random) => {
      if (random.uniform() < 0.5)
        log.card.set('meter from', log.form === 'chelated' ? '2.2 mg/L' : `${log.low * 1.2} mg/L`);
      else log.card.set('meter accuracy', round(1.4 * (log.high - log.low), 3));
      return 'anywhere';
    },
  },
  {
    name: 'own day count off',
    codes: ['own-day-count'],
    plant: (log, random) => {
      const by = wholeBetween(random, 2, 5);
      const held = heldRows(log);
      for (const row of log.rows) delete row.holdDay;
      for (const row of held) (row as KeeperRow).holdDay = Math.floor(row.when - log.holdFrom + 1e-6) + 1 + by;
      return held;
    },
  },
];

/** Leaves out the tests of so many days after one of the hold's, and names the one that ends the stretch. */
function untested(log: KeeperLog, days: number, random: Parameters<FaultKind['plant']>[1]): KeeperRow[] | null {
  const held = heldRows(log, 2, 2);
  const starts = held.filter(({ when }) => (held[held.length - 1]?.when ?? 0) - when > days + 2);
  if (starts.length === 0) return null;
  const from = oneOf(random, starts).when;
  const ends = log.rows.find((row) => isTested(row) && row.when >= from + days);
  if (ends === undefined) return null;
  const shift = ends.when - (from + days);
  if (shift > 0.01) ends.when = from + days;
  const kept = log.rows.filter((row) => row.when <= from || row.when >= ends.when || row === ends);
  log.rows.splice(0, log.rows.length, ...kept.sort((a, b) => a.when - b.when));
  return [ends];
}

function cutAfter(log: KeeperLog, when: number): void {
  const kept = log.rows.filter((row) => row.when <= when);
  log.rows.splice(0, log.rows.length, ...kept);
}
