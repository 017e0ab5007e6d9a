import { writeWhole } from './files/writeWhole.js';
import type { BundledFunction } from '../calls/bundledFunction.js';
import { templateBytes, templatePlans, type TemplateKind } from '../templates/write/templateBytes.js';
import { FileProblem } from '../../sheet/index.js';
import { printable } from './printable.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';

interface TemplateTerms {
  readonly functions: readonly BundledFunction[];
  readonly out: string;
  readonly replace?: boolean;
  /** [serial day] */
  readonly now: number;
}

const sentences: Readonly<Record<TemplateKind, string>> = {
  tank: 'a new workbook for one system',
  shop: 'a new workbook for a shop with several systems',
  demo: 'the demo workbook, whose data is invented',
};
const kinds = Object.keys(templatePlans) as TemplateKind[];

/** `lazaret template KIND --out FILE`: a new workbook to begin with. */
export async function template(kind: string, terms: TemplateTerms, terminal: Terminal): Promise<ExitCode> {
  const known = kinds.find((each) => each === kind.toLowerCase());
  if (known === undefined) {
    throw new FileProblem(
      `there is no template "${kind}"; write tank (one system), shop (several in one log) or demo (the demo workbook)`,
    );
  }
  if (!/\.xlsx$/i.test(terms.out))
    throw new FileProblem(`a template is an .xlsx workbook, and the name ${terms.out} does not end in .xlsx`);
  const { functions, out, replace = false, now } = terms;
  writeWhole(out, await templateBytes(known, { bundle: functions, now }), { inputs: [], replace });
  terminal.out(`${printable(out)}: ${sentences[known]}`);
  return exitCode.done;
}
