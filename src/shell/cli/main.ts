import { program } from './program.js';
import { FileProblem } from '../zip/fileProblem.js';
import { exitCode, type Terminal } from './terminal.js';

/** A reader that goes away, such as `head`, is no fault. */
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code === 'EPIPE') process.exit(process.exitCode ?? exitCode.done);
  throw fault;
});

const terminal: Terminal = {
  out: (text) => process.stdout.write(`${text}\n`),
  err: (text) => process.stderr.write(`lazaret: ${text}\n`),
  columns: process.stdout.isTTY ? process.stdout.columns : undefined,
};

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
