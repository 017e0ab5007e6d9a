import { program } from './program.js';
import { FileProblem } from '../../sheet/index.js';
import { systemReason } from './files/systemReason.js';
import { printable } from './printable.js';
import { exitCode, type Terminal } from './terminal.js';

/** A reader that goes away, such as `head`, is no fault; an answer that cannot be written whole is not given. */
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code === 'EPIPE') process.exit(process.exitCode ?? exitCode.done);
  terminal.err(`the answer cannot be written: ${systemReason(fault)}`);
  process.exit(exitCode.refused);
});

const terminal: Terminal = {
  out: (text) => process.stdout.write(`${text}\n`),
  // What somebody typed is repeated here, file names too.
  err: (text) => process.stderr.write(`lazaret: ${printable(text)}\n`),
  columns: columnsOf(process.stdout),
};

/** A terminal that does not know its width says 0. */
function columnsOf({ isTTY, columns }: NodeJS.WriteStream): number | undefined {
  return isTTY && columns > 0 ? columns : undefined;
}

program(terminal)
  .then(end)
  .catch((fault: unknown) => {
    terminal.err(fault instanceof FileProblem ? fault.message : String(fault instanceof Error ? fault.stack : fault));
    end(exitCode.refused);
  });

/** The formula engine leaves a timer running, so the end is ours to set; what was written goes out first. */
function end(code: number): void {
  process.exitCode = code;
  process.stdout.write('', () => process.stderr.write('', () => process.exit(code)));
}
