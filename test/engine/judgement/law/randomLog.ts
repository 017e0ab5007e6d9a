import { seededNumbers, type SeededNumbers } from '../../../../src/engine/level/seededNumbers.js';
import type { Treatment } from '../../../../src/engine/rules/treatment.js';
import { faultKinds } from '../../audit/faults/auditFigures.js';
import { treatmentIn } from '../../audit/faults/auditOf.js';
import { between, nextFaultlessLog, oneOf, wholeBetween } from '../../audit/faults/faultlessLog.js';
import { doseFor, insertRow, isTested, type KeeperLog } from '../../audit/faults/keeperLog.js';
import { writtenLog } from '../../audit/faults/writtenLog.js';

/** A random log with its faults, and the moments at which it is judged. */
export interface RandomLog {
  readonly seed: number;
  readonly form: string;
  readonly whole: Treatment;
  readonly moments: readonly number[];
}

const notes = [
  'power off all night',
  'water conditioner added',
  'carbon in the filter',
  'dosed twice by mistake',
  'hyposalinity started',
  'new test kit',
  'formalin bath of 45 minutes',
  'fed mysis',
  'live rock for hiding',
];
const cells = ['LOW', '>3', '<0.5', '2.0-2.4', 'about 2', 'void', '0.02', '9'];
const signs = [
  'not eating',
  'breathing heavily',
  'flashing',
  'eating again',
  'lethargic',
  'spots on the fins',
  'sores',
];

/** A simulated treatment with at most one planted fault, and with whatever else a keeper may write. */
export function randomLog(seed: number): RandomLog {
  const random = seededNumbers(seed);
  const { log } = nextFaultlessLog(seed * 31);
  const touched: number[] = [];
  const planted = random.uniform() < 0.7 ? oneOf(random, faultKinds).plant(log, random) : null;
  if (planted !== null && planted !== 'anywhere') touched.push(...planted.map(({ when }) => when));
  for (let acts = wholeBetween(random, 0, 3); acts > 0; acts--) touched.push(disturb(log, random));
  const { range, card } = writtenLog(log, random);
  const blank = range[0]?.map(() => null) ?? [];
  const spread = range.flatMap((row, index) => (index > 2 && random.uniform() < 0.02 ? [row, blank] : [row]));
  return {
    seed,
    form: log.form,
    whole: treatmentIn({ range: spread, card }),
    moments: momentsOf(log, touched, random),
  };
}

/** Changes the log at a random row, and gives when. */
function disturb(log: KeeperLog, random: SeededNumbers): number {
  const at = wholeBetween(random, 2, log.rows.length - 2);
  const row = log.rows[at] ?? { when: NaN };
  switch (wholeBetween(random, 0, 8)) {
    case 0:
      row.note = oneOf(random, notes);
      break;
    case 1:
      row.dead = wholeBetween(random, 1, 4);
      break;
    case 2:
      return insertRow(log, {
        when: row.when + between(random, 0.02, 0.4),
        dose: doseFor(log, log.aim * between(random, 0.02, 0.6)),
      }).when;
    case 3: {
      const until = row.when + between(random, 1, 5);
      log.rows.splice(0, log.rows.length, ...log.rows.filter(({ when }) => when <= row.when || when > until));
      break;
    }
    case 4:
      if (isTested(row)) Object.assign(row, { copper: oneOf(random, cells) });
      break;
    case 5:
      row.signs = oneOf(random, signs);
      break;
    case 6:
      row.ammonia = Math.round(between(random, 1, 40)) / 10;
      break;
    case 7:
      row.salinity = wholeBetween(random, 12, 26);
      break;
    default:
      row.fishIn = oneOf(random, ['cleaner shrimp', '1 firefish', 'mandarin', '2 yellow tangs']);
  }
  return row.when;
}

/** Soon after what was changed, and anywhere. */
function momentsOf({ rows }: KeeperLog, touched: readonly number[], random: SeededNumbers): readonly number[] {
  const after = (when: number): number => when + oneOf(random, [0.01, 0.05, 0.2, 0.4, 0.9, 1.4, 2.5]);
  const anywhere = (): number => oneOf(random, rows).when;
  return [anywhere(), touched[0] ?? anywhere(), touched[touched.length - 1] ?? anywhere()].map(after);
}
