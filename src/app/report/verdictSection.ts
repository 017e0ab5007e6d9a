import { daysText, findingText, type Finding } from '../../engine/index.js';
import { markup, type Markup } from './markup.js';
import { severityMark } from './findingsSection.js';

/** Whether the hold was long enough, in large plain words, with what it is made of and how much else was found. */
export function verdictSection(findings: readonly Finding[]): Markup {
  const verdicts = findings.filter(({ severity }) => severity === 'verdict');
  const [first, ...rest] = verdicts.map(findingText);
  const lines = rest.map(({ finding, why }) => markup`<li>${finding} <span class="why">${why}</span></li>`);
  return markup`<section class="verdict" aria-labelledby="verdict">
<h2 id="verdict">Verdict</h2>
<p class="answer">${capital(first?.finding ?? 'not complete: there is no log.')}</p>
<p class="why">${first?.why ?? ''}</p>
<dl class="figures">${figures(verdicts)}</dl>
<ul class="lines">${lines}</ul>
<p class="found">Found in the rows: ${counts(findings)}</p>
</section>`;
}

function figures(verdicts: readonly Finding[]): Markup[] {
  const openRow = verdicts.flatMap((finding) =>
    finding.code === 'verdict' && finding.open ? [finding.open.row] : [],
  )[0];
  // The days stand only if the cell that nobody can read was no break.
  const condition = openRow === undefined ? '' : `, if row ${openRow} was in the band`;
  return verdicts.flatMap((finding): Markup[] => {
    if (finding.code === 'verdict-days') {
      const { kind, days, longest, wanted } = finding;
      const held = kind === 'not complete' ? longest : days;
      const name = kind === 'not complete' ? 'longest hold' : kind === 'running' ? 'held so far' : 'held';
      return [figure(number(held), `of ${Number(wanted.toFixed(1))} days`, `${name}${condition}`)];
    }
    if (finding.code === 'verdict-breaks') {
      return [figure(String(finding.rows.length), finding.lost > 0 ? `${daysText(finding.lost)} lost` : '', 'breaks')];
    }
    if (finding.code === 'verdict-untested') {
      const longest = finding.stretches === 0 ? 'none over 36 h' : `longest ${finding.longest.toFixed(0)} h`;
      return [figure(String(finding.stretches), longest, 'untested stretches')];
    }
    return [];
  });
}

function figure(value: string, beside: string, name: string): Markup {
  return markup`<div><dt>${name}</dt><dd><b>${value}</b> ${beside}</dd></div>`;
}

/** Rounded down, as a day not yet over is none. */
function number(days: number): string {
  return daysText(days).split(' ')[0] ?? '';
}

function counts(findings: readonly Finding[]): Markup[] {
  const words = { danger: ['danger', 'dangers'], warning: ['warning', 'warnings'], note: ['note', 'notes'] } as const;
  return (['danger', 'warning', 'note'] as const).map((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return severityMark(severity, `${count === 0 ? 'no' : count} ${words[severity][count === 1 ? 0 : 1]}`);
  });
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
