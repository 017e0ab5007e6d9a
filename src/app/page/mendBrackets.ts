import type { Univer } from '@univerjs/core';
import { LexerTreeBuilder } from '@univerjs/preset-sheets-core';

interface Lexer {
  _squareBracketState: number;
  _resetTemp(): void;
}

/**
 * The sheet component reads a formula while it is typed, and a `[` that is open then stays open for every formula read
 * after: this counts brackets anew at the beginning of each.
 */
export function mendBrackets(univer: Univer): void {
  const lexer = univer.__getInjector().get(LexerTreeBuilder) as unknown as Lexer;
  const reset = lexer._resetTemp.bind(lexer);
  lexer._resetTemp = () => {
    lexer._squareBracketState = 0;
    reset();
  };
}
