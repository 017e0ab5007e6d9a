import { Presets, SingleBar } from 'cli-progress';
import { systemReason } from './files/systemReason.js';
import { printable } from './printable.js';
import { program } from './program.js';
import { exitCode, type Progress, type Terminal } from './terminal.js';

/** A reader that goes away, such as `head`, is no fault; an answer that cannot be written whole is not given. */
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code === 'EPIPE') process.exit(process.exitCode ?? exitCode.done);
  terminal.err(`lazaret: the answer cannot be written: ${systemReason(fault)}`);
  process.exit(exitCode.refused);
});

const terminal: Terminal = {
  out: (text) => process.stdout.write(`${text}\n`),
  err: (text) => process.stderr.write(`${text}\n`),
  columns: columnsOf(process.stdout),
  progress: (files) => (process.stderr.isTTY && files >= fewest ? bar(files) : silent),
};

/** A terminal that does not know its width says 0. */
function columnsOf({ isTTY, columns }: NodeJS.WriteStream): number | undefined {
  return isTTY && columns > 0 ? columns : undefined;
}

const fewest = 3;
const nameWidth = 30;
const silent: Progress = { step: () => undefined, end: () => undefined };

function bar(files: number): Progress {
  const format = '{bar} {value} of {total}  {name}';
  const shown = new SingleBar(
    { format, clearOnComplete: true, hideCursor: true, stream: process.stderr },
    Presets.shades_grey,
  );
  shown.start(files, 0, { name: '' });
  return {
    step: (name) =>
      shown.increment(1, { name: printable(name.length > nameWidth ? `…${name.slice(1 - nameWidth)}` : name) }),
    end: () => shown.stop(),
  };
}

program(process.argv.slice(2), { terminal, dist: __dirname })
  .then(end)
  .catch((fault: unknown) => {
    terminal.err(`lazaret: ${printable(String(fault instanceof Error ? fault.stack : fault))}`);
    end(exitCode.refused);
  });

/** The formula engine leaves a timer running, so the end is ours to set; what was written goes out first. */
function end(code: number): void {
  process.exitCode = code;
  process.stdout.write('', () => process.stderr.write('', () => process.exit(code)));
}
