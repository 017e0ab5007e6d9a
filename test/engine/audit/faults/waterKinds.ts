import { between, oneOf, round, wholeBetween } from './faultlessLog.js';
import type { FaultKind } from './faultKind.js';
import {
  doseFor,
  heldRows,
  insertRow,
  isMiswritten,
  isTested,
  moveLevel,
  readingOf,
  type KeeperLog,
  type KeeperRow,
} from './keeperLog.js';

const hour = 1 / 24;

/** Doses, changes and what is in the water: the readings after a fault show what it does. */
export const waterKinds: readonly FaultKind[] = [
  {
    name: 'a hold broken by a reading below',
    codes: ['hold-broken'],
    plant: (log, random) => {
      const row: KeeperRow & { copper: number } = oneOf(random, unfinishedRows(log));
      const missing = row.copper - log.low * between(random, 0.7, 0.93);
      row.copper = readingOf(row.copper - missing);
      const dose = doseFor(log, missing);
      insertRow(log, { when: row.when + 0.5 * hour, dose });
      return [row];
    },
  },
  {
    name: 'below the band between two tests',
    codes: ['level-below-between', 'unmatched-change'],
    plant: (log, random) => {
      const row = oneOf(random, unfinishedRows(log));
      const share = between(random, 0.3, 0.6);
      const change = { when: row.when + 2 * hour, change: round(share * log.treatment.volume, 1) };
      insertRow(log, change);
      const dose = { when: row.when + 5 * hour, dose: doseFor(log, share * row.copper) };
      insertRow(log, dose);
      return nearlyFree(log, row.when, dose.when) ? [change, dose] : null;
    },
  },
  {
    name: 'a dose given twice',
    codes: ['double-dose'],
    plant: (log, random) => {
      const row = anyDose(log, random);
      const later = oneOf(random, [0, 0.25, 0.5, 1, 1.5, 2]) * hour;
      if (row === null || isTestedBetween(log, row.when, row.when + later)) return null;
      const again = insertRow(log, { when: row.when + later, dose: row.dose });
      moveLevel(log, again.when, Infinity, (row.dose * log.treatment.strength) / log.treatment.volume);
      return [row, again];
    },
  },
  {
    name: 'a dose written twice',
    codes: ['double-dose'],
    plant: (log, random) => {
      const row = anyDose(log, random);
      const later = oneOf(random, [0, 0, 0.1, 0.5]) * hour;
      if (row === null || isTestedBetween(log, row.when, row.when + later)) return null;
      return [row, insertRow(log, { when: row.when + later, dose: row.dose })];
    },
  },
  {
    name: 'the wrong form on the card',
    codes: ['wrong-form'],
    plant: (log) => {
      log.card.set('form', { sulfate: 'chelated', amine: 'chelated', chelated: 'amine' }[log.form]);
      return 'anywhere';
    },
  },
  {
    name: 'free copper read of a chelated hold',
    codes: ['wrong-form'],
    plant: (log, random) => {
      if (log.form !== 'chelated') return null;
      const share = between(random, 0.1, 0.28);
      for (const row of log.rows) if (isTested(row)) row.copper = readingOf(row.copper * share);
      return 'anywhere';
    },
  },
  {
    name: 'above the band by over 10 %',
    codes: ['above-band'],
    plant: (log, random) => {
      const row: KeeperRow & { copper: number } = oneOf(random, heldRows(log, 2, 3));
      const over = log.high * between(random, 1.13, 1.4) - row.copper;
      const dose = { when: row.when - 1.5 * hour, dose: doseFor(log, over) };
      if (!nearlyFree(log, dose.when - hour, row.when)) return null;
      insertRow(log, dose);
      row.copper = readingOf(row.copper + over);
      insertRow(log, { when: row.when + 2 * hour, change: round((over / row.copper) * log.treatment.volume, 1) });
      return [row];
    },
  },
  {
    name: 'an unmatched change',
    codes: ['unmatched-change'],
    plant: (log, random) => {
      const row = oneOf(random, unfinishedRows(log));
      const share = between(random, 0.08, 0.5);
      const change = insertRow(log, { when: row.when + 2 * hour, change: round(share * log.treatment.volume, 1) });
      moveLevel(log, change.when, Infinity, -share * row.copper);
      return [change];
    },
  },
  {
    name: 'a change said to be matched that was not',
    codes: ['unmatched-change'],
    plant: (log, random) => {
      const row = oneOf(random, unfinishedRows(log));
      const share = between(random, 0.25, 0.5);
      const litres = round(share * log.treatment.volume, 1);
      const change = insertRow(log, { when: row.when + 2 * hour, change: litres, note: 'matched' });
      moveLevel(log, change.when, Infinity, -share * row.copper);
      return [change];
    },
  },
  {
    name: 'rock, sand or carbon that takes up copper',
    codes: ['absorber'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(
        random,
        heldRows(log, 2, 8).filter(({ when }) => when - log.holdFrom < 28),
      );
      row.note = oneOf(random, [
        'added live rock for hiding',
        'coral sand in the corner',
        'aragonite added',
        'put crushed coral in the filter',
        'carbon in the filter',
        'new media in the filter',
        'small bag of resin',
        'calcareous media from the display',
      ]);
      const loss = between(random, log.form === 'sulfate' ? 0.2 : 0.08, 0.3);
      takeUp(log, row.when, -Math.log1p(-loss));
      return [row];
    },
  },
  {
    name: 'copper in the top-off, noted',
    codes: ['copper-in-top-off'],
    plant: (log, random) => {
      const row: KeeperRow = oneOf(random, heldRows(log));
      row.note = oneOf(random, [
        'ATO reservoir dosed too',
        'dosed top-off water',
        'topped off with copper water',
        'copper in the top-off',
        'top-off was medicated',
        'topped up with treated water',
      ]);
      return [row];
    },
  },
  {
    name: 'copper in the top-off, not noted',
    codes: ['copper-in-top-off'],
    plant: (log) => {
      const { volume, topOffPerDay, lossPerDay } = log.treatment;
      const share = topOffPerDay / volume;
      const corrects = log.rows.some(({ dose, when }) => dose !== undefined && when >= log.holdFrom + 0.5);
      // Copper that only makes up for what is lost shows nowhere.
      if (share < 0.01 || share < 2 * lossPerDay || corrects || heldRows(log).length < 20) return null;
      const rows = log.rows.filter(({ topOff, when }) => topOff !== undefined && when >= log.holdFrom);
      let added = 0;
      for (const row of log.rows) {
        if (row.when >= log.holdFrom && row.topOff !== undefined) added += (row.topOff / volume) * log.aim * 1.5;
        if (isTested(row)) row.copper = readingOf(row.copper + added);
      }
      return rows;
    },
  },
  {
    name: 'a reading that nothing explains',
    codes: ['unexplained-reading'],
    plant: (log, random) => {
      const row: KeeperRow & { copper: number } = oneOf(random, heldRows(log, 2, 3));
      const level = row.copper;
      do row.copper = readingOf(level * between(random, 1.3, 1.6));
      while (isMiswritten(row.copper, level));
      return [row];
    },
  },
  {
    name: 'a dose that is not in the log',
    codes: ['unexplained-reading'],
    plant: (log, random) => {
      const held = heldRows(log, 2, 3);
      const at = wholeBetween(random, 0, held.length - 2);
      const [before, after] = [held[at], held[at + 1]];
      if (before === undefined || after === undefined) return null;
      moveLevel(log, before.when, Infinity, log.aim * between(random, 0.25, 0.5));
      return [after];
    },
  },
  {
    name: 'a dose on an untested level',
    codes: ['dose-untested'],
    plant: (log, random) => {
      const row = oneOf(random, heldRows(log, 3, 6));
      const until = row.when + 1.6;
      const rest = log.rows.filter(({ when, copper }) => copper === undefined || when <= row.when || when > until);
      log.rows.splice(0, log.rows.length, ...rest);
      const dose = doseFor(log, 0.03 * log.aim);
      insertRow(log, { when: row.when + hour, dose });
      insertRow(log, { when: row.when + 1.2, dose });
      moveLevel(log, row.when, Infinity, (2 * dose * log.treatment.strength) / log.treatment.volume);
      return log.rows.filter((each) => each.dose !== undefined && each.when > row.when && each.when <= until);
    },
  },
  {
    name: 'raised too fast',
    codes: ['raised-too-fast', 'dose-too-large'],
    plant: (log) => {
      const first = log.rows.find(({ dose }) => dose !== undefined);
      const tests = log.rows.filter(isTested);
      if (first === undefined) return null;
      const doses = log.rows.filter(({ dose, when }) => dose !== undefined && when < log.holdFrom);
      const total = doses.reduce((sum, { dose = 0 }) => sum + dose, 0);
      const kept = log.rows.filter((row) => !doses.includes(row) || row === first);
      log.rows.splice(0, log.rows.length, ...kept);
      first.dose = round(total, 1);
      const level = (total * log.treatment.strength) / log.treatment.volume;
      let at: KeeperRow | undefined;
      for (const row of tests) {
        if (row.when <= first.when || row.when >= log.holdFrom) continue;
        row.copper = readingOf(level * Math.exp(-log.rate * (row.when - first.when)));
        at ??= row;
      }
      return at === undefined ? null : [first, at];
    },
  },
];

/** Rows of the hold while it is still short of its days, with some before and after. */
function unfinishedRows(log: KeeperLog) {
  return heldRows(log, 3, 3).filter(({ when }) => when - log.holdFrom < 29);
}

/** No row but the planted ones lies between two times. */
function nearlyFree({ rows }: KeeperLog, from: number, to: number): boolean {
  return rows.filter(({ when }) => when > from && when < to).length <= 1;
}

function isTestedBetween({ rows }: KeeperLog, from: number, to: number): boolean {
  return rows.some(({ copper, when }) => copper !== undefined && when > from && when <= to);
}

function anyDose({ rows }: KeeperLog, random: Parameters<FaultKind['plant']>[1]) {
  const doses = rows.filter((row): row is KeeperRow & { dose: number } => row.dose !== undefined);
  return doses.length === 0 ? null : oneOf(random, doses);
}

/** From a time on the level falls at a further rate; doses of the log bring it up as they did. */
function takeUp(log: KeeperLog, from: number, rate: number): void {
  let missing = 0;
  let since = from;
  let level = log.aim;
  for (const row of log.rows) {
    if (row.when <= from) continue;
    if (!isTested(row)) continue;
    level = row.copper;
    const days = row.when - since;
    missing = missing * Math.exp(-(rate + log.rate) * days) + level * (1 - Math.exp(-rate * days));
    since = row.when;
    row.copper = readingOf(level - missing);
  }
}
