import {
  findingText,
  isoFromSerial,
  references,
  type Finding,
  type ReferenceKey,
  type Severity,
} from '../../engine/index.js';
import { Markup, markup, quotedText } from './markup.js';

type Told = Finding & { readonly severity: Exclude<Severity, 'verdict'> };

/** Everything found besides the verdict, the most serious first, each with its row, its reason and its source. */
export function findingsSection(findings: readonly Finding[], sources: readonly ReferenceKey[]): Markup {
  const told = findings.filter((finding): finding is Told => finding.severity !== 'verdict');
  return markup`<section class="findings" aria-labelledby="findings">
<h2 id="findings">Findings</h2>
${told.length === 0 ? markup`<p>No rule found anything else in the rows.</p>` : table(told, sources)}
</section>`;
}

const columns = ['Severity', 'When', 'Row', 'What was found', 'Why it matters', 'Source'] as const;

/** The roles stand written out: on narrow screens the rows are laid out as blocks, and a table must stay a table. */
function table(told: readonly Told[], sources: readonly ReferenceKey[]): Markup {
  const heads = columns.map((name) => markup`<th scope="col" role="columnheader">${name}</th>`);
  return markup`<table role="table">
<caption>${told.length} ${told.length === 1 ? 'finding' : 'findings'}; rows are those of the sheet</caption>
<thead role="rowgroup"><tr role="row">${heads}</tr></thead>
<tbody role="rowgroup">${told.map((finding) => row(finding, sources))}</tbody>
</table>`;
}

function row(finding: Told, sources: readonly ReferenceKey[]): Markup {
  const { severity, when, row: at, source } = finding;
  const { finding: found, why } = findingText(finding);
  const place = sources.indexOf(source) + 1;
  return markup`<tr role="row" class="${severity}">
<th scope="row" role="rowheader">${severityMark(severity)}</th>
<td role="cell" class="when">${when === null ? '' : momentText(when)}</td>
<td role="cell" class="row">${at ?? ''}</td>
<td role="cell" class="what">${quotedText(found)}</td>
<td role="cell" class="why">${quotedText(why)}</td>
<td role="cell" class="source"><span class="cite">${references[source].cite}</span> <a href="#source-${place}">[${place}]</a></td>
</tr>`;
}

/** A line may break between the date and the time of day, and nowhere else. */
function momentText(when: number): Markup {
  const [date = '', time = ''] = isoFromSerial(when).split(' ');
  return markup`<span class="date">${date}</span> <span class="date">${time}</span>`;
}

/** Each severity has a shape of its own, so that it can be told apart without colour. */
const shapes: Readonly<Record<Exclude<Severity, 'verdict'>, string>> = {
  danger: '<path d="M4 0h4l4 4v4l-4 4h-4l-4-4v-4z"/>',
  warning: '<path d="M6 .5l6 11h-12z"/>',
  note: '<circle cx="6" cy="6" r="4.4" fill="none" stroke="currentColor" stroke-width="1.8"/>',
};

/** A severity as a shape and its word. */
export function severityMark(severity: Exclude<Severity, 'verdict'>, word: string = severity): Markup {
  const shape = new Markup(
    `<svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">${shapes[severity]}</svg>`,
  );
  return markup`<span class="severity ${severity}">${shape} ${word}</span>`;
}
