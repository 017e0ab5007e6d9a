import type { State } from '../../../../src/engine/judgement/state.js';
import type { Task } from '../../../../src/engine/judgement/task.js';
import type { Treatment } from '../../../../src/engine/rules/treatment.js';
import { auditFindings } from '../../../../src/engine/audit/auditFindings.js';
import { doNowTable } from '../../../../src/engine/text/doNowTable.js';
import { openByAudit, Rows, type Open } from './openByAudit.js';

/** Every row begins with one of these; so many of them stand in the contract. */
const acts =
  /^(switch off|give air|restore the temperature|move out|change water|no copper|call a vet|test copper( again)?|test ammonia( and oxygen)?|test copper, ammonia and oxygen|correct row [1-9]\d*|measure the water|check the bottle|check the card|compare the kits|write the strength on the card|look at the fish|go on with copper|treat for something else|lower copper, then wait|raise slowly|stop copper|choose a pace|dose|thin the solution|move fish|take copper out|give|days left|see QT\.READY|nothing now)$/;

const raises = new Set(['dose', 'raise slowly', 'thin the solution']);
const killing = 1;

/** Where a table of DONOW breaks the law, in words. */
export function breaches(treatment: Treatment, tasks: readonly Task[], stage: State['stage']): readonly string[] {
  const open = stage === 'ended' ? [] : openByAudit(treatment);
  return [...spokenAgainst(open, tasks), ...silent(open, tasks), ...badRows(tasks), ...badEnd(treatment, tasks)];
}

function spokenAgainst(open: readonly Open[], tasks: readonly Task[]): readonly string[] {
  // Water is changed whatever else is open where ammonia or the copper itself kills, and only there.
  const mayChange = open.some(({ finding: { code } }) => code === 'unionised-ammonia' || code === 'above-band');
  const isExcepted = ({ act, urgency }: Task): boolean => act === 'change water' && urgency === killing && mayChange;
  return open.flatMap(({ finding, against }) =>
    tasks
      .filter((task) => against.some((what) => (what === 'dose' ? raises.has(task.act) : task.act === what)))
      .filter((task) => !isExcepted(task))
      .map(({ act }) => `${act} against ${finding.code} of row ${finding.row}`),
  );
}

function silent(open: readonly Open[], tasks: readonly Task[]): readonly string[] {
  const dangers = open.filter(({ finding }) => finding.severity === 'danger');
  const { rows } = doNowTable(tasks);
  const first = rows.slice(0, Math.max(3, dangers.length));
  return dangers
    .filter(
      ({ finding: { row }, answers }) =>
        !first.some(([act, , , , why]) => answers.test(String(act)) || `${act} ${why} `.match(`row ${row}[: ]`)),
    )
    .map(({ finding }) => `silent on ${finding.code} of row ${finding.row}`);
}

function badRows(tasks: readonly Task[]): readonly string[] {
  const { rows } = doNowTable(tasks);
  const bad: string[] = rows.length > 7 || rows.length === 0 ? [`${rows.length} rows`] : [];
  for (const [act, amount, unit, by, why] of rows) {
    if (!acts.test(String(act))) bad.push(`"${act}" is not in the list`);
    if (String(why).trim() === '' || String(why).length > 120) bad.push(`${act}: Why of ${String(why).length}`);
    if (typeof by !== 'number' || !(by > 0)) bad.push(`${act}: by ${by}`);
    if (amount === '') continue;
    const step = { mL: 0.1, L: 0.5, days: 0.01 }[String(unit)] ?? NaN;
    const steps = Number(amount) / step;
    const isFine = Math.abs(steps - Math.round(steps)) < 1e-6 && (Number(amount) > 0 || unit === 'days');
    if (!isFine) bad.push(`${act} ${amount} ${unit}`);
  }
  if (tasks.filter(({ act }) => act === 'dose').length > 1) bad.push('two doses');
  return bad;
}

/** No end is named where the verdict is open, the last test is too old for the hold, or it was below. */
function badEnd(treatment: Treatment, tasks: readonly Task[]): readonly string[] {
  if (!tasks.some(({ act }) => act === 'days left')) return [];
  const { log, now, card } = treatment;
  const last = new Rows(log, now).lastReading;
  const hours = (now - (log.when[last] ?? NaN)) * 24;
  const isOpen = auditFindings(treatment).some((finding) => finding.code === 'verdict' && finding.open !== null);
  return [
    ...(isOpen ? ['an end though the verdict is open'] : []),
    ...(hours <= 36.51 ? [] : [`an end on a test of ${hours.toFixed(1)} h ago`]),
    ...((log.low[last] ?? NaN) >= card.band.low - 1e-9 ? [] : ['an end on a reading below']),
  ];
}
