import type { HoldTerms } from '../hold/holdTerms.js';
import type { HoldTrace } from '../hold/holdTrace.js';
import type { LevelModel } from '../level/levelModel.js';
import type { Card } from '../log/card.js';
import type { ReadingColumns } from '../log/readingColumns.js';
import type { Log } from '../log/table/log.js';
import type { WaterEvents } from '../log/waterEvents.js';
import type { SignRow } from './signs/signSteps.js';

/** One system's log and card with what the engine makes of them: all that a rule looks at. */
export interface Treatment {
  /** Entries up to `asOf`. */
  readonly log: Log;
  readonly card: Card;
  /** The log's readings, in time order. */
  readonly readings: ReadingColumns;
  readonly terms: HoldTerms;
  readonly trace: HoldTrace;
  readonly events: WaterEvents;
  /** null: the log has no reading the model can start from, or doses and no strength. */
  readonly levels: LevelModel | null;
  /** The texts about the fish in time order, each with the step it asks for. */
  readonly signs: readonly SignRow[];
  /** The moment the question is asked for: `as of`, else the log's last entry. [serial day] */
  readonly now: number;
  /** Whether `as of` was given. */
  readonly isAsked: boolean;
}

/** What was done to some water, what that made of its level, and what is written beside it: a stretch of a treatment has it too. */
export type WatchedWater = Pick<Treatment, 'card' | 'events' | 'levels' | 'log' | 'signs'>;
