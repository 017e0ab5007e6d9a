import { auditTable, type Finding } from '../../engine/index.js';
import { element } from './element.js';

/** More than these are counted. */
const most = 8;

/** The findings below the plot, gravest first, each with a way to its row. */
export function panelFindings(findings: readonly Finding[], chosen: (row: number) => void): void {
  const section = element('panel-findings');
  const texts = auditTable(findings).rows.map(([, , , finding]) => String(finding));
  const shown = findings.flatMap(({ severity, row }, i) =>
    severity === 'verdict' ? [] : [{ severity, row, text: texts[i] ?? '' }],
  );
  const heading = document.createElement('h3');
  heading.textContent =
    shown.length === 0 ? 'Nothing else was found in this log.' : counted(shown.map((one) => one.severity));
  const list = document.createElement('ul');
  for (const { severity, row, text } of shown.slice(0, most)) {
    const item = document.createElement('li');
    item.dataset['severity'] = severity;
    item.append(`${severity}${row === null ? '' : ', '}`);
    if (row !== null) item.append(rowLink(row, chosen));
    item.append(`: ${text}`);
    list.append(item);
  }
  const rest = document.createElement('p');
  if (shown.length > most) rest.textContent = `and ${shown.length - most} more; QT.AUDIT lists all of them.`;
  section.replaceChildren(heading, list, rest);
  section.hidden = false;
}

function rowLink(row: number, chosen: (row: number) => void): HTMLButtonElement {
  const link = document.createElement('button');
  link.type = 'button';
  link.className = 'row-link';
  link.textContent = `row ${row}`;
  link.addEventListener('click', () => chosen(row));
  return link;
}

function counted(severities: readonly Finding['severity'][]): string {
  const of = (wanted: Finding['severity'], one: string, many: string): string[] => {
    const count = severities.filter((severity) => severity === wanted).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  };
  return [
    ...of('danger', 'danger', 'dangers'),
    ...of('warning', 'warning', 'warnings'),
    ...of('note', 'note', 'notes'),
  ].join(', ');
}
