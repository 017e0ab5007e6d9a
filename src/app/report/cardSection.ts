import { cardTable } from '../../engine/index.js';
import type { Audited } from '../logs/audited.js';
import { markup, quotedText, type Markup } from './markup.js';

/** The treatment card as it was written and understood. */
export function cardSection({ card, cardEntries, cardFrom }: Audited): Markup {
  const rows = cardTable(cardEntries, card).rows.map(([name = '', value = '', unit = '', read = '']) => {
    const shown = typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value);
    const understood = read === 'unknown' ? 'not used' : read;
    return markup`<tr><th scope="row">${quotedText(String(name))}</th><td>${quotedText(shown)}${unit === '' ? '' : ` ${unit}`}</td><td>${String(understood)}</td></tr>`;
  });
  return markup`<section class="card" aria-labelledby="card">
<h2 id="card">Treatment card</h2>
<table>
<caption>From ${cardFrom}, as it was understood</caption>
<thead><tr><th scope="col">Name</th><th scope="col">Value</th><th scope="col">Read as</th></tr></thead>
<tbody>${rows}</tbody>
</table>
</section>`;
}
