import type { FindingSentences } from './findingWords.js';

/** The hold: its breaks, its stretches without a test, its end. */
export const holdFindings = {
  'hold-broken': ({ level, low, days }) => ({
    finding: `reads ${level}, below ${low}`,
    why: `${days}`,
  }),
} satisfies Partial<FindingSentences>;
