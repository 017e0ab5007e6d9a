import type { Token } from './formulaTokens.js';
import { typedName } from './functionName.js';

interface Frame {
  readonly of: string;
  /** How many commas of this call have been passed. */
  place: number;
  readonly names: Set<string>;
}

/** Which tokens name a value of LET or a parameter of LAMBDA, where it is introduced and wherever it is used. */
export function parameterTokens(tokens: readonly Token[]): Set<number> {
  const found = new Set<number>();
  const frames: Frame[] = [];
  tokens.forEach(({ kind, text }, i) => {
    const frame = frames.at(-1);
    if (kind === 'open') {
      const before = tokens[i - 1];
      frames.push({ of: before?.kind === 'function' ? typedName(before.text) : '', place: 0, names: new Set() });
    } else if (kind === 'close') frames.pop();
    else if (kind === 'comma' && frame !== undefined) frame.place += 1;
    else if (kind === 'name' || kind === 'function') {
      const name = parameterName(text);
      if (kind === 'name' && frame !== undefined && introduces(frame, tokens, i)) frame.names.add(name);
      if (frames.some(({ names }) => names.has(name))) found.add(i);
    }
  });
  return found;
}

/** The name of a value without the prefix that files put before it; case does not matter. */
export function parameterName(text: string): string {
  return text.replace(/^_xlpm\./i, '').toLowerCase();
}

/** A name on its own between commas: every second argument of LET, every argument of LAMBDA except the last. */
function introduces({ of, place }: Frame, tokens: readonly Token[], at: number): boolean {
  const next = beside(tokens, at, 1);
  const before = beside(tokens, at, -1);
  const isAlone = next === 'comma' && (before === 'open' || before === 'comma');
  return isAlone && ((of === 'LET' && place % 2 === 0) || of === 'LAMBDA');
}

function beside(tokens: readonly Token[], at: number, step: 1 | -1): Token['kind'] | undefined {
  let i = at + step;
  while (tokens[i]?.kind === 'space') i += step;
  return tokens[i]?.kind;
}
