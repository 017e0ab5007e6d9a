/** What a plot of one treatment shows, as plain data. Times are serial days of 1900, levels mg/L. */
export interface PlotData {
  /** First and last moment of anything in it, the moment the question is asked for among them. */
  readonly from: number;
  readonly to: number;
  /** null: the question was asked for the log's last entry. */
  readonly asOf: number | null;
  readonly band: { readonly low: number; readonly high: number | null };
  readonly wantedDays: number;
  readonly readings: readonly PlotReading[];
  /** The level by mass balance; empty where there is no model. Two points at one time are before and after an event. */
  readonly course: readonly CoursePoint[];
  readonly holds: readonly PlotHold[];
  readonly breaks: readonly PlotBreak[];
  readonly untested: readonly UntestedSpan[];
  readonly doses: readonly PlotDose[];
  readonly changes: readonly PlotChange[];
  readonly fish: readonly FishMark[];
  /** Copper cells that could not be read. */
  readonly unread: readonly { readonly when: number; readonly row: number }[];
}

export interface PlotReading {
  readonly when: number;
  readonly row: number;
  readonly low: number;
  /** null: the reading has no top. */
  readonly high: number | null;
  /** Where it is drawn: the low end, of a reading under a bound the bound. */
  readonly level: number;
  readonly status: 'below' | 'in band' | 'above';
  readonly bound: 'under' | 'over' | 'range' | null;
  readonly approximate: boolean;
  /** As people write it, such as `<0.05` or `~2.2`. */
  readonly text: string;
}

export interface CoursePoint {
  readonly when: number;
  readonly expected: number;
  /** 95 % band. */
  readonly low: number;
  readonly high: number;
}

export interface PlotHold {
  readonly from: number;
  readonly to: number;
  readonly days: number;
  readonly standing: 'enough' | 'running' | 'too short';
}

export interface PlotBreak {
  readonly when: number;
  readonly row: number;
  readonly why: 'below' | 'untested';
  /** Of the hold that it ended. [days] */
  readonly lost: number;
}

export interface UntestedSpan {
  readonly from: number;
  readonly to: number;
  readonly hours: number;
  /** Of the test that ended it, or of the last test where it has not ended. */
  readonly row: number;
}

export interface PlotDose {
  readonly when: number;
  readonly row: number;
  readonly millilitres: number;
  /** What it adds to the level; null: the strength is not known. */
  readonly rise: number | null;
}

export interface PlotChange {
  readonly when: number;
  readonly row: number;
  readonly litres: number;
  /** Share of the volume of that time. */
  readonly percent: number;
  /** Copper in the new water; null: brought to the tank's level. */
  readonly replacement: number | null;
}

export interface FishMark {
  readonly when: number;
  readonly row: number;
  readonly kind: 'in' | 'out' | 'died';
  /** At least so many; null: the row gives no number. */
  readonly count: number | null;
  /** As the keeper wrote it. */
  readonly text: string;
}
