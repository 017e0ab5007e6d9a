import type { RunFormula } from './runFormula.js';

/** A formula read a cell that is being worked out for it. */
export class CircularReference extends Error {
  override readonly name = 'CircularReference';

  constructor(readonly formula: RunFormula) {
    super('circular reference');
  }
}
