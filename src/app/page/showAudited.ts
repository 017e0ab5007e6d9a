import { auditTable } from '../../engine/index.js';
import type { Audited } from '../logs/audited.js';
import { plotData, type PlotData } from '../plot/plotData.js';
import { plotWords } from '../plot/plotWords.js';
import { element, showText } from './element.js';
import { panelFindings } from './panelFindings.js';

/** All in the panel but the plot itself. @returns what the plot shows. */
export function showAudited(audited: Audited, chosen: (row: number) => void): PlotData {
  const { findings, treatment, cardFrom, system } = audited;
  const [verdict] = auditTable(findings).rows.map(([, , , finding]) => String(finding));
  const isGrave = findings.some(({ severity }) => severity === 'danger');
  const data = plotData(treatment);
  showText('panel-why', `${system === null ? '' : `System ${system}. `}Judged by the card in ${cardFrom}.`);
  showText('panel-verdict', verdict ?? '', isGrave ? 'refusal' : 'hint');
  showText('panel-words', plotWords(data));
  panelFindings(findings, chosen);
  // A log without rows has no time to draw.
  element('panel-figure').hidden = data.from === 0;
  return data;
}

/** The panel without a plot, and what to do. */
export function showWhyNot(why: string): void {
  showText('panel-why', why);
  showText('panel-verdict', '');
  showText('panel-words', '');
  element('panel-figure').hidden = true;
  element('panel-findings').hidden = true;
}
