import type { Block } from './demo/sheetPlan.js';
import type { ChartPlan } from './chartPlan.js';

/** A workbook as plain data, before it is written. */
export interface TemplatePlan {
  readonly title: string;
  readonly subject: string;
  readonly description: string;
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly NamePlan[];
  /** Rows and columns are fitted to what formulas answer: see `fittedPlan`. */
  readonly isFitted?: boolean;
}

/** A name that formulas use for cells, such as `Card` for `Card!$A$5:$B$24`. */
interface NamePlan {
  readonly name: string;
  readonly cells: string;
  readonly comment: string;
}

export interface SheetPlan {
  readonly name: string;
  readonly tab: Tab;
  /** Column widths in characters, from column A on. */
  readonly widths: readonly number[];
  /** Heights in points; rows that are not named fit their text. */
  readonly heights?: readonly { readonly rows: readonly [first: number, last: number]; readonly height: number }[];
  readonly frozen?: { readonly rows: number; readonly columns?: number };
  readonly blocks: readonly Block[];
  /** Cells whose formula fills others, beside those of our functions. */
  readonly arrays?: readonly string[];
  /** Cells whose formula is refused on purpose, to show what a refusal looks like. */
  readonly refused?: readonly string[];
  readonly looks: readonly { readonly range: string; readonly look: Look }[];
  readonly formats: readonly { readonly range: string; readonly format: string }[];
  readonly merged: readonly string[];
  /** A text that leads to another sheet. */
  readonly links?: readonly { readonly at: string; readonly to: string }[];
  readonly table?: { readonly name: string; readonly range: string };
  readonly validations?: readonly Validation[];
  readonly conditions?: readonly Condition[];
  readonly charts?: readonly ChartPlan[];
  readonly page: PagePlan;
}

interface PagePlan {
  readonly orientation: 'portrait' | 'landscape';
  /** If left out, whatever is filled. */
  readonly area?: string;
  /** Heading rows repeated on every page, such as `1:1`. */
  readonly repeated?: string;
  /** Made smaller until it fits on one page. */
  readonly onOnePage?: boolean;
}

/** What a cell takes, and what is said before and after something else is written into it. */
export interface Validation {
  readonly range: string;
  readonly allows:
    | { readonly kind: 'list'; readonly values: readonly string[] }
    | { readonly kind: 'listFrom'; readonly cells: string }
    | { readonly kind: 'decimal' | 'whole' | 'date'; readonly from: number; readonly to: number }
    | { readonly kind: 'formula'; readonly formula: string }
    | { readonly kind: 'anything' };
  readonly title: string;
  readonly prompt: string;
  readonly refusal: string;
}

/** A look that a cell takes on where a formula is true; the first that is true decides. */
export interface Condition {
  readonly range: string;
  readonly rules: readonly { readonly when: string; readonly tone: Tone }[];
}

/** Colours of the sheet tabs by what a sheet is for. */
export type Tab = 'read' | 'write' | 'answer';

export type Look =
  | 'title'
  | 'lead'
  | 'note'
  | 'remark'
  | 'explained'
  | 'section'
  | 'heading'
  | 'numberHeading'
  | 'tableHeading'
  | 'tableNumberHeading'
  | 'label'
  | 'input'
  | 'inputNumber'
  | 'answer'
  | 'state'
  | 'log'
  | 'logNumber'
  | 'logText'
  | 'spill'
  | 'spillNumber'
  | 'spillText'
  | 'spillName'
  | 'step'
  | 'stepName'
  | 'stepNumber'
  | 'caution'
  | 'cautionNumber'
  | 'link'
  | 'helper'
  | 'helperNote'
  | 'plain'
  | 'lineTitle'
  | 'aside'
  | 'unit'
  | 'answerNumber'
  | 'inputText'
  | 'wrappedNumber'
  | 'spillSmall'
  | 'caption'
  | 'warning'
  | 'refusal';

/** What a condition makes of a cell; they differ in lightness and weight, not in colour alone. */
export type Tone =
  'row' | 'verdict' | 'low' | 'inside' | 'high' | 'due' | 'overdue' | 'done' | 'example' | 'unseen' | 'guard';
