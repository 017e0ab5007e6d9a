/** What is to be known of the answers of a template, whichever it is. */
export const answersNote = [
  'The answers are functions of the add-in Lazaret, all in the namespace QT. It has to be loaded for them to follow what you write.',
  'Without it a program shows the answers stored in this file until it computes them anew, and then that it does not know the function. The command lazaret recalc FILE --out COPY computes them without the add-in.',
  'An answer #VALUE! or #N/A has a sentence that says which row or cell to mend: select the cell, or its warning sign, to read it.',
  'Blue cells are for writing. Tables without a blue cell are one formula each, which needs the empty cells below it: write nothing there.',
] as const;
