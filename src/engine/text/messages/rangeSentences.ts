import type { Sentences } from './sentences.js';

/** Ranges of cells, and bands. */
export const rangeSentences = {
  'not-a-line': ({ field, rows, columns }) =>
    `${field} has ${rows} rows and ${columns} columns; give one column or one row` +
    (field === 'when' ? ', or two columns, date and time of day' : ''),
  'unequal-ranges': ({ first, firstCells, second, secondCells }) =>
    `${first} has ${firstCells} cells, ${second} ${secondCells}; give ranges of the same rows`,
  'not-a-form': ({ field, given }) =>
    `${field} ${given} is not a form of copper; write "sulfate", "amine" or "chelated"` +
    (field === 'band' ? ', or the low limit as a number' : ''),
  'form-unclear': ({ field, given }) =>
    `${field} ${given} is unclear; write "sulfate" (free copper, 0.18–0.21) or "amine" (complexed, 0.45–0.55)`,
  'band-upside-down': ({ low, high }) => `band low ${low} is above its high ${high}; write the low limit first`,
  'band-cells': ({ rows, columns }) =>
    `band has ${rows} rows and ${columns} columns; give a form, one low limit, or two cells, low and high`,
} satisfies Partial<Sentences>;
