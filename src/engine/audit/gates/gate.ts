export type GateName =
  | 'days reached'
  | 'no untested stretch'
  | 'no open row'
  | 'signs'
  | 'deaths'
  | 'flukes treated'
  | 'copper out'
  | 'observation';

/** Why a gate is met or not. Times are serial days, levels mg/L. */
export type GateReason =
  | {
      readonly code: 'days';
      readonly held: number;
      readonly wanted: number;
      readonly readyOn: number | null;
      /** A test was made at the end of these days or later. */
      readonly isTested: boolean;
    }
  | { readonly code: 'fish-short'; readonly fish: readonly string[]; readonly readyOn: number | null }
  | { readonly code: 'no-hold' }
  | { readonly code: 'longest-stretch'; readonly hours: number; readonly limit: number; readonly isSince: boolean }
  | { readonly code: 'open-rows'; readonly rows: readonly number[] }
  | { readonly code: 'every-row-read' }
  | { readonly code: 'sign'; readonly text: string; readonly row: number; readonly when: number }
  | { readonly code: 'second-time'; readonly text: string; readonly row: number; readonly when: number }
  | { readonly code: 'unread-sign'; readonly text: string; readonly row: number }
  | { readonly code: 'no-recovery'; readonly text: string; readonly row: number }
  | { readonly code: 'nothing-written'; readonly about: 'signs' | 'deaths'; readonly days: number }
  | { readonly code: 'none-noted'; readonly about: 'signs' | 'deaths'; readonly days: number }
  | {
      readonly code: 'died';
      readonly count: number;
      readonly days: number;
      readonly row: number;
      readonly when: number;
    }
  | {
      readonly code: 'praziquantel';
      readonly first: number;
      /** null: none is noted in the window. */
      readonly second: number | null;
      readonly from: number;
      readonly until: number;
    }
  | { readonly code: 'no-praziquantel' }
  | {
      readonly code: 'copper-in';
      readonly level: number;
      readonly row: number;
      readonly when: number;
      readonly limit: number;
    }
  | { readonly code: 'not-tested-out' }
  | { readonly code: 'test-due'; readonly after: 'first' | 'second'; readonly change: number; readonly due: number }
  | { readonly code: 'copper-out'; readonly change: number; readonly tested: number }
  | { readonly code: 'observed'; readonly ended: number; readonly earliest: number; readonly advised: number }
  | { readonly code: 'not-begun' };

/** One condition of letting fish go. */
export interface Gate {
  readonly name: GateName;
  readonly met: 'yes' | 'no' | 'not known';
  /** Since when it is met; null: not met, or ever since. [serial day] */
  readonly since: number | null;
  readonly why: GateReason;
}
