import { refuse } from '../../../engine/index.js';
import type { FormulaFault } from './formula.js';

const longestShown = 20;

/** A formula and how far it has been read. */
export class FormulaText {
  private at = 0;

  constructor(private readonly text: string) {}

  /** Goes past what a pattern finds right here, spaces before it left out; undefined where it finds nothing. */
  take(pattern: RegExp): string | undefined {
    const sticky = new RegExp(String.raw`\s*(${pattern.source})`, `${pattern.flags}y`);
    sticky.lastIndex = this.at;
    const found = sticky.exec(this.text);
    if (found === null) return undefined;
    this.at = sticky.lastIndex;
    return found[1];
  }

  /** Whether a pattern stands right here; nothing is gone past. */
  has(pattern: RegExp): boolean {
    const before = this.at;
    const found = this.take(pattern) !== undefined;
    this.at = before;
    return found;
  }

  /** A refusal that says what stands here instead of what was expected. */
  fault(expected: string): { readonly ok: false; readonly problem: FormulaFault } {
    const spaces = /^\s*/.exec(this.text.slice(this.at))?.[0].length ?? 0;
    const at = this.at + spaces;
    const rest = this.text.slice(at).trimEnd();
    const found = rest.length > longestShown ? `${rest.slice(0, longestShown)}…` : rest;
    const where = rest === '' ? 'the formula ends' : `character ${at + 1}, ${found}`;
    return refuse({ at: at + 1, message: `${where}: ${expected}` });
  }
}
