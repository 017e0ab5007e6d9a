import { Command, CommanderError, Option } from 'commander';
import { limitsTable } from '../../engine/index.js';
import { FileProblem } from '../../sheet/index.js';
import { audit, type AuditTerms } from './audit.js';
import { calc } from './calc.js';
import { functionReference } from './docs/functionReference.js';
import { nodeBundle } from './files/nodeBundle.js';
import { asOfOption, csvChoices, nowOption, replaceOption } from './options.js';
import { printable } from './printable.js';
import { recalc } from './recalc.js';
import { template } from './template.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';
import { textTable } from './textTable.js';
import { wallClock } from './wallClock.js';

const about = `Cell functions for a copper quarantine log, from the command line.
Copper is a poison to fish and people. What is computed here is a proposal: test, and an aquatic veterinarian decides.`;

interface World {
  readonly terminal: Terminal;
  /** The folder with the built cell functions. */
  readonly dist: string;
}
interface Session extends World {
  end(code: ExitCode): void;
}

/** Reads the arguments, runs the command, and gives the exit code: 0 done, 1 an audit found a danger, 2 refused. */
export async function program(args: readonly string[], { terminal: given, dist }: World): Promise<ExitCode> {
  let code: ExitCode = exitCode.done;
  // What somebody typed is repeated here, file names too.
  const terminal: Terminal = { ...given, err: (text) => given.err(`lazaret: ${printable(text)}`) };
  const commands = new Command('lazaret')
    .description(about)
    .version('0.1.0')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text.trimEnd()),
      writeErr: (text) => terminal.err(text.trimEnd()),
    });
  for (const add of [addCalc, addRecalc, addAudit, addTemplate, addFunctions, addLimits]) {
    add(commands, { terminal, dist, end: (ended) => (code = ended) });
  }
  try {
    await commands.parseAsync(args, { from: 'user' });
  } catch (fault) {
    if (fault instanceof CommanderError) return fault.exitCode === 0 ? exitCode.done : exitCode.refused;
    if (!(fault instanceof FileProblem)) throw fault;
    terminal.err(fault.message);
    return exitCode.refused;
  }
  return code;
}

function addCalc(commands: Command, { terminal, dist, end }: Session): void {
  commands
    .command('calc')
    .argument('<formula>', `such as '=QT.DOSE(168,"0 mg/L",2.25,4,"chelated")'`)
    .description('compute one formula and print its answer or its table')
    .option('--json', 'print the answer as JSON')
    .addOption(nowOption())
    .action(async (formula: string, { json = false, now = wallClock() }: { json?: boolean; now?: number }) =>
      end(await calc(formula, { functions: nodeBundle(dist).functions, json, now }, terminal)),
    );
}

function addRecalc(commands: Command, { terminal, dist, end }: Session): void {
  commands
    .command('recalc')
    .argument('<files...>', 'workbooks (.xlsx, .xlsm, .ods) or folders of them')
    .description('recalculate every QT formula in a copy that is otherwise the same, and print what changed')
    .requiredOption('--out <file>', 'the copy; a folder for several files')
    .addOption(nowOption())
    .addOption(replaceOption())
    .action(
      async (files: string[], { now = wallClock(), ...options }: { out: string; now?: number; replace?: boolean }) =>
        end(await recalc(files, { functions: nodeBundle(dist).functions, now, ...options }, terminal)),
    );
}

function addAudit(commands: Command, { terminal, end }: Session): void {
  const command = commands
    .command('audit')
    .argument('<files...>', 'workbooks (.xlsx, .xlsm, .ods), .csv or .tsv files, or folders of them')
    .description(
      'find the logs by their headings and check the treatments by their rows; the exit code is 1 if there is danger',
    )
    .option('--sheet <name>', 'the sheet of the log, where several sheets hold one')
    .option('--system <name>', 'only this system of a shared log')
    .option('--card <range>', 'the two columns of the card, such as Card!A1:B12')
    .addOption(asOfOption())
    .addOption(new Option('--json', 'print the findings as JSON').conflicts('html'))
    .option('--html <file>', 'write a report to print or hand over; a folder for several')
    .option('--all', 'show all findings, even when many logs are audited');
  for (const option of [...csvChoices(), replaceOption()]) command.addOption(option);
  command.action(async (files: string[], options: AuditTerms) => end(await audit(files, options, terminal)));
}

function addTemplate(commands: Command, { terminal, dist, end }: Session): void {
  commands
    .command('template')
    .argument('<kind>', 'tank (one system), shop (several systems in one log) or demo (the demo workbook)')
    .description('write a new workbook to begin with')
    .requiredOption('--out <file>', 'the new .xlsx file')
    .addOption(replaceOption())
    .action(async (kind: string, options: { out: string; replace?: boolean }) =>
      end(await template(kind, { functions: nodeBundle(dist).functions, now: wallClock(), ...options }, terminal)),
    );
}

function addFunctions(commands: Command, { terminal, dist }: Session): void {
  commands
    .command('functions')
    .argument('[name]', 'one function, such as HOLDDAYS')
    .description('print the reference of the cell functions')
    .action((name?: string) => {
      const text = functionReference(nodeBundle(dist).catalogue, name);
      if (text === undefined) {
        throw new FileProblem(`there is no function "${name ?? ''}"; lazaret functions lists them all`);
      }
      terminal.out(text);
    });
}

function addLimits(commands: Command, { terminal }: Session): void {
  commands
    .command('limits')
    .description('list every limit at which an answer changes, with its unit, status and source')
    .action(() => {
      const { columns, rows } = limitsTable();
      terminal.out(textTable([columns.map(({ heading }) => heading), ...rows], { id: 'LIMITS', aligned: true }));
    });
}
