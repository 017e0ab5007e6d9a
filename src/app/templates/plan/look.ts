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
