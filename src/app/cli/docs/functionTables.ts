import type { Example, ExampleCell, ExampleTopic } from '../../../../functions/examples.js';
import type { FunctionCatalogue, FunctionEntry } from '../../calls/functionCatalogue.js';

const longestCell = 60;
const mostRows = 2;

/** Every cell function with what it is for, an example, and what the example gives: a Markdown table for each topic. */
export function functionTables(catalogue: FunctionCatalogue, topics: readonly ExampleTopic[]): string {
  const described = new Map(catalogue.functions.map((entry) => [entry.name, entry]));
  return topics
    .map(({ topic, examples }) => {
      const rows = examples.map((example) => tableRow(example, described.get(example.name)));
      return [`### ${topic}`, '', '| Function | What it is for | For example |', '| --- | --- | --- |', ...rows].join(
        '\n',
      );
    })
    .join('\n\n');
}

function tableRow({ name, formula, answer, shows }: Example, entry: FunctionEntry | undefined): string {
  if (entry === undefined) throw new Error(`${name} has an example but is no function`);
  const signature = `\`${name}(${entry.parameters.map(parameterName).join(', ')})\``;
  const gives = isTable(answer) ? answer.slice(0, mostRows).map(rowText).join('<br>') : cellText(answer);
  const cells = [signature, entry.description ?? '', `\`${formula}\`<br>${gives}<br>${shows}`];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

/** `hoursBetween` as people read it, in brackets where it may be left out. */
function parameterName({ name, optional }: FunctionEntry['parameters'][number]): string {
  const words = /^(pH|mL)$/.test(name) ? name : name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return optional === true ? `[${words}]` : words;
}

function isTable(answer: Example['answer']): answer is readonly (readonly ExampleCell[])[] {
  return Array.isArray(answer);
}

function rowText(row: readonly ExampleCell[]): string {
  return row.map(cellText).join(' · ').trimEnd();
}

function cellText(cell: ExampleCell): string {
  const text = String(cell);
  return text.length > longestCell ? `${text.slice(0, longestCell).trimEnd()}…` : text;
}
