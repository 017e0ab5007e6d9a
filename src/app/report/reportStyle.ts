const colours = `
:root {
  --ink: #1c2b33;
  --quiet: #4a5b64;
  --line: #cfd8dc;
  --deep: #1f4e5f;
  --tint: #f1f5f6;
  --danger: #9c1c1c;
  --warning: #7a4a00;
  --note: #3d5161;
}`;

const base = `
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body {
  margin: 0;
  font: 15px/1.45 -apple-system, 'Segoe UI', 'Liberation Sans', Arial, system-ui, sans-serif;
  color: var(--ink);
  background: #fff;
  overflow-wrap: break-word;
}
main { max-width: 1060px; margin: 0 auto; padding: 28px 24px 48px; }
h1 { margin: 0; font-size: 28px; line-height: 1.2; font-weight: 650; color: var(--deep); }
h2 { margin: 0 0 8px; padding-bottom: 4px; font-size: 17px; font-weight: 650; color: var(--deep); border-bottom: 1px solid var(--line); }
h3 { margin: 10px 0 2px; font-size: 14px; font-weight: 650; }
section { margin-top: 28px; }
p { margin: 0 0 6px; }
a { color: var(--deep); }
table { width: 100%; border-collapse: collapse; font-size: 13.5px; font-variant-numeric: tabular-nums; }
caption { padding-bottom: 5px; font-size: 12.5px; color: var(--quiet); text-align: left; }
th, td { padding: 5px 12px 5px 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); }
thead th { font-size: 12px; font-weight: 600; color: var(--quiet); border-bottom: 1.5px solid var(--deep); }
tbody th { font-weight: 500; }
th:last-child, td:last-child { padding-right: 0; }`;

const parts = `
.kind { margin: 0 0 2px; font-size: 13px; color: var(--quiet); }
.facts { display: flex; flex-wrap: wrap; gap: 4px 26px; margin: 10px 0 0; padding-top: 8px; border-top: 3px solid var(--deep); font-size: 13px; }
.facts div { min-width: 0; }
.facts dt { color: var(--quiet); font-size: 12px; }
.facts dd { margin: 0; }
.overview { display: grid; grid-template-columns: minmax(0, 3fr) minmax(0, 2fr); gap: 0 36px; }
.answer { margin: 4px 0; font-size: 22px; line-height: 1.25; font-weight: 600; }
.verdict .why { font-size: 12.5px; color: var(--quiet); }
.figures { display: flex; flex-wrap: wrap; gap: 8px; margin: 12px 0; }
.figures div { flex: 1 1 120px; padding: 8px 12px; background: var(--tint); border-left: 3px solid var(--deep); }
.figures dt { font-size: 12px; color: var(--quiet); }
.figures dd { margin: 0; font-size: 13px; }
.figures b { display: block; font-size: 22px; line-height: 1.2; font-weight: 650; }
.lines { margin: 0 0 8px; padding-left: 18px; font-size: 13.5px; }
.found { display: flex; flex-wrap: wrap; gap: 4px 16px; font-size: 13.5px; }
.severity { white-space: nowrap; font-weight: 600; }
.severity.danger { color: var(--danger); }
.severity.warning { color: var(--warning); }
.severity.note { color: var(--note); }
.shape { width: 11px; height: 11px; margin-right: 2px; vertical-align: -1px; fill: currentColor; }
figure { margin: 0; }
figure svg { display: block; max-width: 100%; height: auto; }
figure .wide svg { width: 100%; }
figure .narrow { display: none; }
figcaption { margin-top: 8px; max-width: 760px; font-size: 13.5px; color: var(--quiet); }
.date { white-space: nowrap; }
.findings .when { width: 132px; }
.findings .row { text-align: right; }
.findings .why, .findings .source { color: var(--quiet); }
.findings .what { width: 36%; }
.findings .why { width: 30%; }
.findings .source { width: 11%; }
.holds table { max-width: 760px; }
.method p, .method li, .cautions li { font-size: 13.5px; max-width: 90ch; }
.method ol, .cautions ul { margin: 4px 0 0; padding-left: 20px; }
.cautions li { margin-bottom: 3px; }
.status { color: var(--quiet); }
.decides { padding: 10px 14px; background: var(--tint); border-left: 3px solid var(--deep); }`;

const narrowScreens = `
@media screen and (max-width: 820px) {
  main { padding: 18px 16px 36px; }
  .overview { display: block; }
  figure .wide { display: none; }
  figure .narrow { display: block; }
  .findings table, .findings tbody, .findings tr, .findings th, .findings td { display: block; }
  .findings caption { display: block; }
  .findings thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .findings tr { padding: 8px 0; border-bottom: 1px solid var(--line); }
  .findings tbody :is(.severity, .when, .row, .what, .why, .source) { width: auto; text-align: left; }
  .findings tbody :is(th, td) { padding: 0 0 2px; border: 0; }
  .findings tbody th, .findings .when, .findings .row { display: inline-block; margin-right: 12px; }
  .findings .row::before { content: 'row '; }
}`;

const paper = `
@page {
  margin: 11mm 12mm 12mm;
  @bottom-right { content: counter(page) ' / ' counter(pages); font: 7.5pt sans-serif; color: #4a5b64; }
}
@media print {
  body { font-size: 8pt; line-height: 1.28; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  main { max-width: none; padding: 0; }
  section { margin-top: 7pt; }
  h1 { font-size: 16pt; }
  h2 { margin-bottom: 2pt; padding-bottom: 1pt; font-size: 9.5pt; break-after: avoid; }
  h3 { margin: 0; font-size: 7.4pt; break-after: avoid; }
  p { margin-bottom: 2pt; }
  a { color: inherit; text-decoration: none; }
  table { font-size: 7.1pt; line-height: 1.22; }
  caption { padding-bottom: 1pt; font-size: 7pt; break-after: avoid; }
  thead { display: table-header-group; }
  thead th { font-size: 6.9pt; }
  th, td { padding: 1.1pt 6pt 1.1pt 0; }
  tr, figure, .cautions li { break-inside: avoid; }
  .kind, .facts { font-size: 7.2pt; }
  .facts dt, .figures dt { font-size: 6.9pt; }
  .facts { margin-top: 3pt; padding-top: 2pt; border-top-width: 2pt; }
  .overview { grid-template-columns: minmax(0, 11fr) minmax(0, 9fr); gap: 0 16pt; }
  .answer { margin: 2pt 0; font-size: 12.5pt; }
  .verdict .why, .lines, .found, figcaption { font-size: 7.1pt; }
  .lines { margin-bottom: 3pt; }
  .figures { margin: 3pt 0; gap: 4pt; }
  .figures div { flex-basis: 60pt; padding: 2pt 6pt; }
  .figures dd { font-size: 7.1pt; }
  .figures b { font-size: 12.5pt; }
  .shape { width: 6.5pt; height: 6.5pt; }
  figcaption { max-width: none; margin-top: 1pt; }
  .findings .when { width: 38pt; white-space: normal; }
  .findings .row { width: 22pt; }
  .findings .what { width: 42%; }
  .findings .why { width: auto; }
  .findings .source { width: 24pt; }
  .findings .cite { display: none; }
  .method .parts, .cautions ul { columns: 2; column-gap: 16pt; }
  .method .parts div { margin-bottom: 3pt; break-inside: avoid; }
  .method p, .method li, .cautions li { font-size: 6.9pt; line-height: 1.22; max-width: none; }
  .method ol { margin: 0; }
  .cautions ul { margin-top: 2pt; }
  .cautions li { margin-bottom: 0.5pt; }
  .decides { padding: 2pt 8pt; margin-bottom: 2pt; }
}`;

/** The look of the report on screens, narrow screens and paper; each text keeps a contrast of 4.5:1. */
export const reportStyle = [colours, base, parts, narrowScreens, paper].join('\n');
