import { Presets, SingleBar } from 'cli-progress';
import { printable } from './printable.js';

export interface Progress {
  step(name: string): void;
  end(): void;
}

const quick = 3;
const nameWidth = 30;

/** A bar on the terminal while several files are worked on; nothing where nobody watches. */
export function progress(files: number, stream: NodeJS.WriteStream): Progress {
  if (!stream.isTTY || files < quick) return { step: () => undefined, end: () => undefined };
  const bar = new SingleBar(
    { format: '{bar} {value} of {total}  {name}', clearOnComplete: true, hideCursor: true, stream },
    Presets.shades_grey,
  );
  bar.start(files, 0, { name: '' });
  return {
    step: (name) =>
      bar.increment(1, { name: printable(name.length > nameWidth ? `…${name.slice(1 - nameWidth)}` : name) }),
    end: () => bar.stop(),
  };
}
