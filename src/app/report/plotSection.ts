import type { Audited } from '../logs/audited.js';
import { drawPlot } from '../plot/drawPlot.js';
import { plotData } from '../plot/plotData.js';
import { plotWords } from '../plot/plotWords.js';
import { Markup, markup } from './markup.js';

/** Sizes of the plot on paper and wide screens, and on narrow ones. [px] */
const wide = { width: 760, height: 368 };
const narrow = { width: 350, height: 420 };

/** The plot, drawn for paper and once more for narrow screens, with what it shows in words. */
export function plotSection({ treatment }: Audited, document: Document): Markup {
  const data = plotData(treatment);
  const drawn = (size: typeof wide, id: string): Markup =>
    new Markup(drawPlot(data, { document, ...size, id }).outerHTML);
  return markup`<section class="plot" aria-labelledby="plot">
<h2 id="plot">Levels, holds, doses and changes</h2>
<figure>
<div class="wide">${drawn(wide, 'plot-wide')}</div>
<div class="narrow">${drawn(narrow, 'plot-narrow')}</div>
<figcaption>${plotWords(data)}</figcaption>
</figure>
</section>`;
}
