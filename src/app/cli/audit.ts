import { basename } from 'node:path';
import { inputFiles } from './files/inputFiles.js';
import { readWhole } from './files/readWhole.js';
import { writeWhole } from './files/writeWhole.js';
import { auditBook } from '../logs/auditBook.js';
import { hiddenLogs } from '../logs/logsIn.js';
import { reportHtml } from '../report/reportHtml.js';
import { FileProblem, readBook } from '../../sheet/index.js';
import type { AuditedFile, FileRefused } from './auditedFile.js';
import { auditJson } from './auditJson.js';
import { auditText } from './auditText.js';
import { type CsvChoices, csvOptions } from './options.js';
import { printable } from './printable.js';
import { reportTargets } from './targets.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';
import { wallClock } from './wallClock.js';

export interface AuditTerms extends CsvChoices {
  readonly sheet?: string;
  readonly system?: string;
  readonly card?: string;
  /** [serial day] */
  readonly asOf?: number;
  readonly json?: boolean;
  readonly html?: string;
  readonly all?: boolean;
  readonly replace?: boolean;
}

interface Outcome {
  readonly audits: AuditedFile[];
  readonly refused: FileRefused[];
  /** What was inferred about files that do not say it themselves. */
  readonly remarks: string[];
}

/** With this many audits or more, only the verdict and the dangers of each are printed. */
const many = 6;
const plainColumns = 100;

/** `lazaret audit FILE…`: the treatments in the files, recomputed from their rows. */
export async function audit(paths: readonly string[], terms: AuditTerms, terminal: Terminal): Promise<ExitCode> {
  const passedOver: FileRefused[] = [];
  const files = inputFiles(paths, (file, { message }) => passedOver.push({ file, message }));
  const outcome = auditedFiles(files, terms, terminal);
  outcome.refused.unshift(...passedOver);
  const { audits, refused, remarks } = outcome;
  if (terms.json === true) terminal.out(auditJson(audits, refused, remarks));
  else {
    if (terms.html !== undefined && audits.length > 0) await writeReports(audits, files, terms, terminal);
    else print(audits, terms, terminal);
    for (const remark of remarks) terminal.err(printable(remark));
  }
  for (const each of refused) terminal.err(printable(refusal(each)));
  if (refused.length > 0) return exitCode.refused;
  return audits.some(isDangerous) ? exitCode.danger : exitCode.done;
}

function auditedFiles(files: readonly string[], terms: AuditTerms, terminal: Terminal): Outcome {
  const outcome: Outcome = { audits: [], refused: [], remarks: [] };
  const bar = terminal.progress(files.length);
  const { sheet, system, card, asOf } = terms;
  const asked = {
    ...(sheet === undefined ? {} : { sheet }),
    ...(system === undefined ? {} : { system }),
    ...(card === undefined ? {} : { card }),
    ...(asOf === undefined ? {} : { asOf }),
  };
  for (const file of files) {
    try {
      const book = readBook(readWhole(file), basename(file), csvOptions(terms));
      outcome.remarks.push(...book.remarks.map((remark) => `${file}: ${remark}`));
      if (sheet === undefined) outcome.remarks.push(...hiddenLogs(book).map((name) => hiddenRemark(file, name)));
      outcome.audits.push(...auditBook(book, asked).map((audited) => ({ file, audited })));
    } catch (fault) {
      if (!(fault instanceof FileProblem)) throw fault;
      outcome.refused.push({ file, message: fault.message });
    }
    bar.step(basename(file));
  }
  bar.end();
  return outcome;
}

function hiddenRemark(file: string, sheet: string): string {
  return `${file}: The hidden sheet "${sheet}" also has a log, which was left out; --sheet audits it.`;
}

/** Some problems begin with the path themselves. */
function refusal({ file, message }: FileRefused): string {
  return message.startsWith(file) ? message : `${file}: ${message}`;
}

function isDangerous({ audited }: AuditedFile): boolean {
  return audited.findings.some(({ severity }) => severity === 'danger');
}

function print(audits: readonly AuditedFile[], { all = false }: AuditTerms, terminal: Terminal): void {
  if (audits.length === 0) return;
  const terms = { brief: !all && audits.length >= many, columns: terminal.columns ?? plainColumns };
  terminal.out(audits.map((each) => auditText(each, terms)).join('\n\n'));
  const dangerous = audits.filter(isDangerous).length;
  if (audits.length > 1) terminal.out(`\n${audits.length} treatments audited, ${dangerous} with danger`);
}

async function writeReports(
  audits: readonly AuditedFile[],
  inputs: readonly string[],
  { html = '', asOf, replace = false }: AuditTerms,
  terminal: Terminal,
): Promise<void> {
  const targets = reportTargets(audits, html);
  for (const [i, { file, audited }] of audits.entries()) {
    const target = targets[i] ?? html;
    const text = reportHtml({ audited, file: basename(file), asOf: asOf ?? null, made: wallClock() });
    writeWhole(target, text, { inputs, replace });
    terminal.out(
      `${printable(target)}: report on ${printable(file)}, ${printable(audited.system ?? audited.log.sheet)}`,
    );
  }
}
