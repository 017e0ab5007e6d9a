import {
  cautions,
  copperForms,
  levelText,
  references,
  sourceText,
  type Card,
  type Finding,
  type ReferenceKey,
} from '../../engine/index.js';
import { markup, type Markup } from './markup.js';

/** The sources that a report cites, in the order in which they come up: the band's, then those of the findings. */
export function sourcesOf(findings: readonly Finding[], { form }: Card): readonly ReferenceKey[] {
  const band = form === null ? [] : [copperForms[form].source];
  return [...new Set<ReferenceKey>([...band, ...findings.map(({ source }) => source)])];
}

/** How the audit computes, and what it cites. */
export function methodSection(card: Card, sources: readonly ReferenceKey[]): Markup {
  const cited = sources.map((key, index) => {
    return markup`<li id="source-${index + 1}">${sourceText(key)} <span class="status">(${statusText[references[key].status]})</span></li>`;
  });
  return markup`<section class="method" aria-labelledby="method">
<h2 id="method">Method and sources</h2>
<div class="parts">
${part('The hold', markup`<p>${holdText(card)}</p>`)}
${part('The level by mass balance', markup`<p>${levelModelText}</p>`)}
${part('Findings and rows', markup`<p>${rowText}</p>`)}
${part('Sources cited', markup`<ol>${cited}</ol>`)}
</div>
</section>`;
}

function part(name: string, body: Markup): Markup {
  return markup`<div><h3>${name}</h3>${body}</div>`;
}

const statusText: Readonly<Record<(typeof references)[ReferenceKey]['status'], string>> = {
  seen: 'read',
  copy: 'read in a copy',
  derived: 'worked out',
  memory: 'from memory, not read',
  practice: 'from experience',
};

function holdText({ band, days, longestGap, confirm }: Card): string {
  const start = confirm === 2 ? 'the second of two readings in a row' : 'the first reading';
  const gap =
    longestGap === Infinity ? '' : `, or until nobody tested for more than ${Number((longestGap * 24).toFixed(1))} h`;
  return (
    `A hold begins with ${start} at or above the low limit of ${levelText(band.low)} and lasts until a reading below it${gap}. ` +
    `Its days have 24 hours and run from its first reading, or the arrival of the fish if that is later, to its last reading not below. ` +
    `${Number(days.toFixed(1))} unbroken days are wanted. A reading above the band endangers the fish and does not end the hold; of “<x” the hold takes 0, of a range the low end.`
  );
}

const levelModelText =
  'Doses, water changes, top-offs, evaporation and a steady loss are carried through the net volume from event to event, and each reading pulls the level toward itself as far as its meter can be trusted. ' +
  'Readings before and after a moment count equally, and the loss is estimated from the log itself. ' +
  'The 95 % band covers the meter’s error, the drift of the level and the uncertainty of the loss; it does not cover an error that a meter repeats every day.';

const rowText =
  'Fixed rules check the rows, and each finding names the row of the sheet, the reason and the source. ' +
  'Text from the file that a spreadsheet would take for a formula is put in quotation marks, so that it stays text when pasted.';

/** The cautions that apply wherever copper is used, and what a report cannot do. */
export function cautionsSection(): Markup {
  return markup`<section class="cautions" aria-labelledby="cautions">
<h2 id="cautions">Cautions</h2>
<p class="decides"><strong>An aquatic veterinarian decides.</strong> This report recomputes what the rows say; it cannot show what was not written down.</p>
<ul>${cautions.map((caution) => markup`<li>${caution}</li>`)}</ul>
</section>`;
}
