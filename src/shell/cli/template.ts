import { writeWhole } from '../files/writeWhole.js';
import type { BundledFunction } from '../host/bundledFunction.js';
import { templateBytes } from '../template/templateBytes.js';
import { FileProblem } from '../zip/fileProblem.js';
import { printable } from './printable.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';

export interface TemplateTerms {
  readonly functions: readonly BundledFunction[];
  readonly out: string;
  readonly replace: boolean;
  /** [serial day] */
  readonly now: number;
}

const kinds = ['tank', 'shop'] as const;

/** `lazaret template KIND --out FILE`: a new workbook to begin with. */
export async function template(kind: string, terms: TemplateTerms, terminal: Terminal): Promise<ExitCode> {
  const known = kinds.find((each) => each === kind.toLowerCase());
  if (known === undefined) {
    throw new FileProblem(`there is no template "${kind}"; write tank (one system) or shop (several in one log)`);
  }
  if (!/\.xlsx$/i.test(terms.out))
    throw new FileProblem(`a template is an .xlsx workbook; ${terms.out} ends otherwise`);
  const { functions, out, replace, now } = terms;
  writeWhole(out, await templateBytes(known, { bundle: functions, now }), { inputs: [], replace });
  terminal.out(
    `${printable(out)}: a new workbook for ${known === 'tank' ? 'one system' : 'a shop with several systems'}`,
  );
  return exitCode.done;
}
