import { exampleTopics } from '../../../../functions/examples.js';
import { housePicture } from '../../../../test/house/housePicture.js';
import { limitsTable, rulesTable, type Table } from '../../../engine/index.js';
import type { FunctionCatalogue } from '../../calls/functionCatalogue.js';
import { functionTables } from './functionTables.js';

/** A part of a document that is written from what the program itself reads. */
interface GeneratedPart {
  readonly file: 'README.md' | 'DEVELOPERS.md';
  /** As its markers name it. */
  readonly name: string;
  readonly text: string;
}

export function generatedParts(catalogue: FunctionCatalogue): GeneratedPart[] {
  return [
    { file: 'README.md', name: 'functions', text: functionTables(catalogue, exampleTopics) },
    { file: 'README.md', name: 'limits', text: markdownTable(limitsTable()) },
    { file: 'README.md', name: 'rules', text: markdownTable(rulesTable()) },
    { file: 'DEVELOPERS.md', name: 'house', text: housePicture() },
  ];
}

/** A document with what stands between the two markers of a part replaced. */
export function withGeneratedPart(document: string, { name, text }: Pick<GeneratedPart, 'name' | 'text'>): string {
  const [begin, end] = [`<!-- ${name}: written by npm run docs -->`, `<!-- end of ${name} -->`];
  const [before, ...rest] = document.split(begin);
  const after = rest[0]?.split(end);
  if (before === undefined || rest.length !== 1 || after?.length !== 2) {
    throw new Error(`the document needs ${begin} and then ${end}, once each`);
  }
  return `${before}${begin}\n\n${text}\n\n${end}${after[1]}`;
}

function markdownTable({ columns, rows }: Table): string {
  const headings = columns.map(({ heading }) => heading);
  return [headings, headings.map(() => '---'), ...rows]
    .map((row) => `| ${row.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`)
    .join('\n');
}
