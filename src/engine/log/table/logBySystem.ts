import { type Log, logEntries } from './log.js';

interface SystemLog {
  /** As first written; '' for rows that name none. */
  readonly name: string;
  readonly log: Log;
}

/** Names of systems are compared without case and spaces around them. */
export function systemKey(name: string): string {
  return name.trim().toLowerCase().replace(/\s+/g, ' ');
}

/** A log's entries by the system they name, systems in the order in which they first appear. */
export function logBySystem(log: Log): readonly SystemLog[] {
  const names = log.texts.system;
  if (names === null) return [{ name: '', log }];
  const systems = new Map<string, { name: string; entries: number[]; rows: Set<number> }>();
  for (let index = 0; index < log.count; index++) {
    const name = names[index] ?? '';
    const key = systemKey(name);
    let system = systems.get(key);
    if (system === undefined) {
      system = { name, entries: [], rows: new Set() };
      systems.set(key, system);
    }
    system.entries.push(index);
    system.rows.add(log.row[index] ?? 0);
  }
  return [...systems.values()].map(({ name, entries, rows }) => ({
    name,
    log: logEntries(log, Uint32Array.from(entries), (_, row) => rows.has(row)),
  }));
}
