import { UnreadableFormula } from './formulaNode.js';
import type { Token, TokenKind } from './formulaTokens.js';

const longestShown = 20;
/** Spreadsheet programs allow 64 nested calls; here brackets and signs count as well. */
const deepest = 300;

/** Reads the tokens of a formula one after another. Spaces are left out, but remembered. */
export class TokenReader {
  private readonly tokens: Token[] = [];
  private readonly afterSpace = new Set<number>();
  private at = 0;
  private depth = 0;

  constructor(tokens: readonly Token[]) {
    for (const token of tokens) {
      if (token.kind === 'space') this.afterSpace.add(this.tokens.length);
      else this.tokens.push(token);
    }
  }

  get next(): Token | undefined {
    return this.tokens[this.at];
  }

  /** Whether a space stands before the next token. */
  get hasSpace(): boolean {
    return this.afterSpace.has(this.at);
  }

  take(): Token {
    const token = this.next;
    if (token === undefined) throw new UnreadableFormula('ends too early');
    this.at += 1;
    return token;
  }

  /** Skips the next token if it is of this kind. */
  skip(kind: TokenKind): boolean {
    if (this.next?.kind !== kind) return false;
    this.at += 1;
    return true;
  }

  expect(kind: TokenKind, shown: string): void {
    if (!this.skip(kind)) throw this.fault(`lacks ${shown}`);
  }

  /** Reads something within something else. */
  within<T>(read: () => T): T {
    if (this.depth >= deepest) throw new UnreadableFormula('is nested too deeply');
    this.depth += 1;
    const found = read();
    this.depth -= 1;
    return found;
  }

  isOperator(...operators: readonly string[]): boolean {
    return this.next?.kind === 'operator' && operators.includes(this.next.text);
  }

  fault(what: string): UnreadableFormula {
    const text = this.next?.text;
    if (text === undefined) return new UnreadableFormula(`${what} at its end`);
    const shown = text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
    return new UnreadableFormula(`${what} before ${shown}`);
  }
}
