import { cautions } from '../../engine/index.js';
import { markup, type Markup } from './markup.js';

/** What holds wherever copper is used, and what a report cannot do. */
export function cautionsSection(): Markup {
  return markup`<section class="cautions" aria-labelledby="cautions">
<h2 id="cautions">Cautions</h2>
<p class="decides"><strong>An aquatic veterinarian decides.</strong> This report recomputes what the rows say; it cannot show what was not written down.</p>
<ul>${cautions.map((caution) => markup`<li>${caution}</li>`)}</ul>
</section>`;
}
