import { faultlessFigures, faultKinds, figuresOf, plantedLog } from './auditFigures.js';

// The whole of it is `npm run audit-figures`.
const logsAKind = 5;
const faultlessLogs = 40;

describe('the audit of logs with a planted fault', () => {
  it('is of twenty kinds and more, each with a name of its own', () => {
    expect(faultKinds.length).toBeGreaterThanOrEqual(20);
    expect(new Set(faultKinds.map(({ name }) => name)).size).toBe(faultKinds.length);
  });

  it.each(faultKinds.map((kind, index) => [kind.name, kind, index] as const))(
    'names %s at its row',
    (_, kind, index) => {
      const { planted, missed } = figuresOf(kind, logsAKind, 1000 * (index + 1));
      expect(planted).toBe(logsAKind);
      expect(missed).toEqual([]);
    },
  );

  it('misses a fault that is not there: the count can fail', () => {
    const none = { name: 'no fault', codes: ['double-dose' as const], plant: () => 'anywhere' as const };
    expect(figuresOf(none, logsAKind, 1).named).toBe(0);
  });

  it('plants the same fault for the same seed', () => {
    const kind = faultKinds[0]!;
    expect(plantedLog(kind, 5).log.rows).toEqual(plantedLog(kind, 5).log.rows);
  });
});

describe('the audit of logs without a fault', () => {
  it('has no danger or warning', () => {
    const { logs, raised, byCode } = faultlessFigures(faultlessLogs, 1);
    expect(logs).toBe(faultlessLogs);
    expect([...byCode]).toEqual([]);
    expect(raised).toBe(0);
  });
});
