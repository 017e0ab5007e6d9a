/** A formula that cannot be worked out here. The message says why, to follow "the formula" in a sentence. */
export class UnreadableFormula extends Error {
  override readonly name = 'UnreadableFormula';
}
