import { exampleTopics, type Example, type ExampleCell } from '../../../../functions/examples.js';
import { cellName, type FunctionCatalogue, type FunctionEntry } from '../../calls/functionCatalogue.js';

/** `lazaret functions [NAME]`: every cell function with its arguments, their units and defaults, and an example. */
export function functionReference(catalogue: FunctionCatalogue, name?: string): string | undefined {
  const wanted = name?.replace(/^=?(?:QT\.)?/i, '').toUpperCase();
  const entries = new Map(catalogue.functions.map((entry) => [entry.id, entry]));
  const topics = exampleTopics
    .map(({ topic, examples }) => ({
      topic,
      texts: examples
        .filter((example) => wanted === undefined || example.name === wanted)
        .map((example) => reference(example, entries.get(example.name))),
    }))
    .filter(({ texts }) => texts.length > 0);
  if (topics.length === 0) return undefined;
  return topics.map(({ topic, texts }) => [topic.toUpperCase(), ...texts].join('\n\n')).join('\n\n\n');
}

function reference(example: Example, entry: FunctionEntry | undefined): string {
  if (entry === undefined) throw new Error(`${example.name} has an example but is no function`);
  const names = entry.parameters.map(({ name, optional }) => (optional === true ? `[${name}]` : name));
  const width = Math.max(0, ...names.map((each) => each.length));
  return [
    `${cellName(entry)}(${names.join(', ')})`,
    `  ${entry.description ?? ''}`,
    ...entry.parameters.map(({ description }, i) => `    ${(names[i] ?? '').padEnd(width)}  ${description ?? ''}`),
    `  Example: ${example.formula}  gives ${shown(example.answer)}`,
    `    ${example.shows}`,
  ].join('\n');
}

function shown(answer: Example['answer']): string {
  const isTable = (one: Example['answer']): one is readonly (readonly ExampleCell[])[] => Array.isArray(one);
  return isTable(answer) ? (answer[0] ?? []).join(' · ') : String(answer);
}
