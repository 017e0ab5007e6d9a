import { holdSpans, holdsTable, isoFromSerial } from '../../engine/index.js';
import type { Audited } from '../logs/audited.js';
import { markup, type Markup } from './markup.js';

/** Every hold with its days and what ended it. */
export function holdsSection({ treatment, card }: Audited): Markup {
  const { columns, rows } = holdsTable(holdSpans(treatment.trace, treatment.terms, card.days));
  return markup`<section class="holds" aria-labelledby="holds">
<h2 id="holds">Holds</h2>
${rows.length === 0 ? markup`<p>No reading began a hold.</p>` : table(columns, rows)}
</section>`;
}

type Cells = ReturnType<typeof holdsTable>['rows'];
type Columns = ReturnType<typeof holdsTable>['columns'];

function table(columns: Columns, rows: Cells): Markup {
  const heads = columns.map(({ heading }) => markup`<th scope="col">${heading}</th>`);
  const lines = rows.map(([from, to, days, enough = '', ended = '', row = '']) => {
    return markup`<tr><th scope="row">${isoFromSerial(Number(from))}</th><td>${isoFromSerial(Number(to))}</td><td>${Number(days).toFixed(2)}</td><td>${String(enough)}</td><td>${String(ended)}</td><td>${String(row)}</td></tr>`;
  });
  return markup`<table>
<caption>${rows.length} ${rows.length === 1 ? 'hold' : 'holds'}, with the reading that ended each</caption>
<thead><tr>${heads}</tr></thead>
<tbody>${lines}</tbody>
</table>`;
}
