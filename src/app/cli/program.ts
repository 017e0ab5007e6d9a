import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { nodeBundle } from './files/nodeBundle.js';
import { FileProblem } from '../../sheet/index.js';
import { audit } from './audit.js';
import { calc } from './calc.js';
import { addLimits } from './limits.js';
import { functionReference } from './docs/functionReference.js';
import { momentOption } from './momentOption.js';
import { progress } from './progress.js';
import { recalc } from './recalc.js';
import { template } from './template.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';
import { wallClock } from './wallClock.js';

const about = `Cell functions for a copper quarantine log, from the command line.
Copper is a poison to fish and people. What is computed here is a proposal: test, and an aquatic veterinarian decides.`;

/** Reads the arguments, runs the command, and gives the exit code: 0 done, 1 an audit found a danger, 2 refused. */
export async function program(terminal: Terminal, argv: readonly string[] = process.argv): Promise<ExitCode> {
  let code: ExitCode = exitCode.done;
  const end = (ended: ExitCode): void => void (code = ended);
  const commands = new Command('lazaret')
    .description(about)
    .version('0.1.0')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text.trimEnd()),
      writeErr: (text) => terminal.err(text.trimEnd()),
    });
  addCalc(commands, terminal, end);
  addRecalc(commands, terminal, end);
  addAudit(commands, terminal, end);
  addTemplate(commands, terminal, end);
  addFunctions(commands, terminal, end);
  addLimits(commands, terminal);
  try {
    await commands.parseAsync(argv);
  } catch (fault) {
    if (fault instanceof CommanderError) return fault.exitCode === 0 ? exitCode.done : exitCode.refused;
    throw fault;
  }
  return code;
}

type End = (code: ExitCode) => void;

const replaceOption = (): Option =>
  new Option('--replace', 'write over a file that is there already, but never over one that is read');
const nowOption = (): Option =>
  new Option('--now <time>', 'the moment that NOW() and TODAY() give, such as "2026-03-01 08:00"').argParser(
    moment('--now'),
  );

function moment(name: string): (text: string) => number {
  return (text) => {
    try {
      return momentOption(text, name);
    } catch (fault) {
      throw fault instanceof FileProblem ? new InvalidArgumentError(fault.message) : fault;
    }
  };
}

function addCalc(commands: Command, terminal: Terminal, end: End): void {
  commands
    .command('calc')
    .argument('<formula>', `such as '=QT.DOSE(168,0,2.25,4,"chelated")'`)
    .description('compute one formula and print its answer or its table')
    .option('--json', 'print the answer as JSON')
    .addOption(nowOption())
    .action(async (formula: string, { json = false, now = wallClock() }: { json?: boolean; now?: number }) =>
      end(await calc(formula, { functions: nodeBundle(__dirname).functions, json, now }, terminal)),
    );
}

function addRecalc(commands: Command, terminal: Terminal, end: End): void {
  commands
    .command('recalc')
    .argument('<files...>', 'workbooks (.xlsx, .xlsm, .ods) or folders of them')
    .description('compute every formula of ours anew in a copy that is otherwise the same; prints what changed')
    .requiredOption('--out <file>', 'the copy; a folder for several files')
    .addOption(nowOption())
    .addOption(replaceOption())
    .action(async (files: string[], options: { out: string; now?: number; replace?: boolean }) => {
      const { out, now = wallClock(), replace = false } = options;
      const bar = (count: number): ReturnType<typeof progress> => progress(count, process.stderr);
      end(
        await recalc(files, { functions: nodeBundle(__dirname).functions, out, now, replace, progress: bar }, terminal),
      );
    });
}

function addAudit(commands: Command, terminal: Terminal, end: End): void {
  commands
    .command('audit')
    .argument('<files...>', 'workbooks (.xlsx, .xlsm, .ods), .csv or .tsv files, or folders of them')
    .description(
      'find the logs by their headings and recompute the treatments from their rows; exit code 1 where there is danger',
    )
    .option('--sheet <name>', 'the sheet of the log, where several hold one')
    .option('--system <name>', 'only this system of a shared log')
    .option('--card <range>', 'the two columns of the card, such as Card!A1:B12')
    .addOption(new Option('--as-of <time>', 'leave later rows out').argParser(moment('--as-of')))
    .addOption(new Option('--json', 'print the findings as JSON').conflicts('html'))
    .option('--html <file>', 'write a report to print or hand over; a folder for several')
    .option('--all', 'all findings, also where many logs are audited')
    .addOption(
      new Option('--delimiter <mark>', 'what parts the cells of a csv file').choices(['comma', 'semicolon', 'tab']),
    )
    .addOption(new Option('--decimal <mark>', 'the decimal mark of a csv file').choices(['point', 'comma']))
    .addOption(new Option('--dates <order>', 'the order of dates in a csv file').choices(['day-first', 'month-first']))
    .addOption(replaceOption())
    .action(async (files: string[], options: Parameters<typeof audit>[1]) => {
      const bar = (count: number): ReturnType<typeof progress> => progress(count, process.stderr);
      end(await audit(files, { ...options, progress: bar }, terminal));
    });
}

function addTemplate(commands: Command, terminal: Terminal, end: End): void {
  commands
    .command('template')
    .argument('<kind>', 'tank (one system), shop (several systems in one log) or demo (the demo workbook)')
    .description('write a new workbook to begin with')
    .requiredOption('--out <file>', 'the new .xlsx file')
    .addOption(replaceOption())
    .action(async (kind: string, { out, replace = false }: { out: string; replace?: boolean }) =>
      end(
        await template(kind, { functions: nodeBundle(__dirname).functions, out, replace, now: wallClock() }, terminal),
      ),
    );
}

function addFunctions(commands: Command, terminal: Terminal, end: End): void {
  commands
    .command('functions')
    .argument('[name]', 'one function, such as HOLDDAYS')
    .description('print the reference of the cell functions')
    .action((name?: string) => {
      const text = functionReference(nodeBundle(__dirname).catalogue, name);
      if (text === undefined)
        throw new FileProblem(`there is no function "${name ?? ''}"; lazaret functions lists them all`);
      terminal.out(text);
      end(exitCode.done);
    });
}
