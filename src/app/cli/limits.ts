import type { Command } from 'commander';
import { limitsTable } from '../../engine/index.js';
import type { Terminal } from './terminal.js';
import { textTable } from './textTable.js';

/** `lazaret limits`: every number at which an answer changes, with its unit, status and source. */
export function addLimits(commands: Command, terminal: Terminal): void {
  commands
    .command('limits')
    .description('list every limit at which an answer changes, with its unit, status and source')
    .action(() => {
      const { columns, rows } = limitsTable();
      terminal.out(textTable([columns.map(({ heading }) => heading), ...rows], { id: 'LIMITS', aligned: true }));
    });
}
