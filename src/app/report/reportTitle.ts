import type { Audited } from '../logs/audited.js';
import { isoFromSerial } from '../../engine/index.js';
import { rangeText } from '../logs/rangeText.js';
import { markup, type Markup } from './markup.js';

export interface ReportInput {
  readonly audited: Audited;
  /** The name of the file. */
  readonly file: string;
  /** null: for the log's last row. [serial day] */
  readonly asOf: number | null;
  /** When the report is made, by the clock on the wall. [serial day] */
  readonly made: number;
  /** Makes the elements of the plot; without one the report brings its own. */
  readonly document?: Document;
}

/** The name of the treatment, and from what and when the report was made. */
export function reportTitle(input: ReportInput): Markup {
  const { audited, file, asOf, made } = input;
  const { sheet, range } = audited.log;
  const last = audited.treatment.now;
  const moment =
    asOf !== null ? isoFromSerial(asOf) : Number.isNaN(last) ? 'the last row' : `${isoFromSerial(last)}, the last row`;
  const facts = [
    ['File', file],
    ['Log', rangeText(sheet, range)],
    ['Card', audited.cardFrom],
    ['As of', moment],
    ['Report made', isoFromSerial(made)],
  ] as const;
  const items = facts.map(([name, value]) => markup`<div><dt>${name}</dt><dd><bdi>${value}</bdi></dd></div>`);
  return markup`<header>
<p class="kind">Copper quarantine, audited from its log</p>
<h1><bdi>${reportName(input)}</bdi></h1>
<dl class="facts">${items}</dl>
</header>`;
}

/** What the report is about, in a few words. */
export function reportName({ audited, file }: ReportInput): string {
  return audited.system ?? file;
}
