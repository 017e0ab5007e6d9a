export type TokenKind =
  | 'space'
  | 'number'
  | 'text'
  | 'error'
  | 'truth'
  | 'operator'
  | 'open'
  | 'close'
  | 'comma'
  | 'semicolon'
  | 'openBrace'
  | 'closeBrace'
  /** The name of a function; its bracket is the next token. */
  | 'function'
  /** A cell, a range, whole columns or rows, with their sheet if it is named. */
  | 'reference'
  /** A defined name, a table alone, or what LET and LAMBDA call a value; with its sheet if it is named. */
  | 'name'
  /** Part of a table, such as `Log[Copper]`. */
  | 'table'
  /** In another file, or in several sheets at once. */
  | 'outside'
  | 'unknown';

/** A part of a formula; the texts of all its tokens together are the formula. */
export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
}
