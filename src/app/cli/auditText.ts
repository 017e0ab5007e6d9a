import { auditTable, isoFromSerial, type Finding } from '../../engine/index.js';
import { rangeText } from '../logs/rangeText.js';
import type { AuditedFile } from './auditedFile.js';
import { printable } from './printable.js';

interface TextTerms {
  /** Only the verdict and the dangers. */
  readonly brief: boolean;
  readonly columns: number;
}

const label = 9;
/** Lines that hold less are harder to read than lines that the terminal breaks. */
const narrowest = 30;

/** One audit as paragraphs to read: what was audited, the verdict, then each finding with its row, its reason, its source. */
export function auditText({ file, audited }: AuditedFile, { brief, columns }: TextTerms): string {
  const { log, system, cardFrom, findings } = audited;
  const place = `${printable(file)}, ${printable(rangeText(log.sheet, log.range))}`;
  const head = [place, system === null ? '' : `system ${printable(system)}`, `card ${printable(cardFrom)}`];
  const texts = auditTable(findings).rows;
  const blocks = findings.flatMap((finding, i) => {
    const shown = !brief || finding.severity === 'verdict' || finding.severity === 'danger';
    return shown ? [block(finding, texts[i] ?? [], columns)] : [];
  });
  const left = brief ? tally(findings) : '';
  return [head.filter((part) => part !== '').join(' · '), ...blocks, ...(left === '' ? [] : [left])].join('\n');
}

function block(finding: Finding, row: readonly unknown[], columns: number): string {
  const [, , , what = '', why = '', source = ''] = row.map((cell) => printable(String(cell)));
  const where = [
    finding.row === null ? '' : `row ${finding.row}`,
    finding.when === null ? '' : isoFromSerial(finding.when),
  ].filter((part) => part !== '');
  const first = `${where.length === 0 ? '' : `${where.join(', ')}: `}${what}`;
  const indent = ' '.repeat(label + 2);
  const rest = [why, finding.severity === 'verdict' || source === '' ? '' : `Source: ${source}`].filter(
    (line) => line !== '',
  );
  const lines = [first, ...rest].flatMap((line) => wrapped(line, Math.max(narrowest, columns - indent.length)));
  return lines.map((line, i) => `${i === 0 ? `  ${finding.severity.padEnd(label)}` : indent}${line}`).join('\n');
}

function tally(findings: readonly Finding[]): string {
  const count = (wanted: string): number => findings.filter(({ severity }) => severity === wanted).length;
  const parts = (['warning', 'note'] as const).flatMap((severity) => {
    const many = count(severity);
    return many === 0 ? [] : [`${many} ${severity}${many === 1 ? '' : 's'}`];
  });
  return parts.length === 0 ? '' : `  ${' '.repeat(label)}and ${parts.join(', ')}; --all shows them`;
}

/** A text as lines of at most so many characters, broken between words; a longer word has a line to itself. */
function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
