import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import ts from 'typescript';
import { references } from '../src/engine/references/references.js';

const files = ['src/base', 'src/engine'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name}`),
);

interface Documented {
  readonly name: string;
  readonly file: string;
  readonly gives: string;
  /** The comment without its stars. */
  readonly text: string;
}

/** Every exported function of the engine with the last comment above it. */
const functions = files.flatMap((file) => {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  return source.statements.filter(ts.isFunctionDeclaration).flatMap((node): Documented[] => {
    if (node.modifiers?.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword) !== true) return [];
    const comment = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc).at(-1)?.getText() ?? '';
    const text = comment.replace(/^\/\*\*|\*\/$/g, '').replace(/^[ \t]*\* ?/gm, '');
    return [{ name: node.name?.text ?? '', file, gives: node.type?.getText() ?? '', text }];
  });
});

/** Folders whose functions give quantities. What only checks or reads an argument gives none. */
const formulaFolders = /^src\/engine\/(chemistry|volume|seawater|dose|ammonia|water|hold|chance)\//;
const givesNoQuantity = /^(boolean|Problem \| null|Reader<.*>)$/s;
const formulas = functions.filter((it) => formulaFolders.test(it.file) && !givesNoQuantity.test(it.gives));
const sectionsInOrder = [
  'Basis:',
  'Validity:',
  'Differs from the source:',
  'Source:',
  '@param',
  '@returns',
  '@example',
];

/** The part of a comment that says where its formula is from: `Source:` to the first tag or blank line. */
const sourceOf = (text: string): string => /^Source:(.*?)(?=^@|^\s*$|$(?![\s\S]))/ms.exec(text)?.[1] ?? '';
const citationsIn = (text: string): string[] =>
  [...sourceOf(text).matchAll(/\[([^\],]+)[^\]]*\]/g)].map((match) => match[1] ?? '');

interface Example {
  readonly expression: string;
  readonly sign: string;
  readonly answer: string;
}
/** `expression // = answer` or `// ≈ answer`, on the line of @example or on lines below it. */
const examplesIn = (text: string): Example[] =>
  text
    .split('@example')
    .slice(1)
    .flatMap((part) => [...part.matchAll(/([\s\S]*?)\/\/ ([=≈]) (.+)/g)])
    .map(([, expression = '', sign = '', answer = '']) => ({
      expression: expression.trim(),
      sign,
      answer: answer.trim(),
    }));

/** Half a unit in the last printed place. */
const tolerance = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);

const scope: Record<string, unknown> = {};
for (const file of files) Object.assign(scope, jest.requireActual<Record<string, unknown>>(resolve(file)));

/** The value of an expression in which every export of the engine is at hand; a Result stands for its value. */
function valueOf(expression: string): unknown {
  const value: unknown = new Function(...Object.keys(scope), `return (${expression});`)(...Object.values(scope));
  const isResult = typeof value === 'object' && value !== null && 'ok' in value;
  return isResult && 'value' in value ? value.value : value;
}

describe('the doc comments of the engine', () => {
  it('are found', () => {
    expect(functions.length).toBeGreaterThan(60);
    expect(formulas.length).toBeGreaterThan(40);
    expect(functions.flatMap((it) => examplesIn(it.text)).length).toBeGreaterThan(25);
    expect(functions.flatMap((it) => citationsIn(it.text)).length).toBeGreaterThan(10);
  });

  it('name the source or the definition of every quantity', () => {
    expect(formulas.filter((it) => !/^(Source|Definition):/m.test(it.text)).map((it) => it.name)).toEqual([]);
  });

  it('say what there is to say in one order', () => {
    const places = functions.map(
      (it) => [it.name, sectionsInOrder.map((s) => it.text.indexOf(s)).filter((at) => at >= 0)] as const,
    );
    expect(
      places.filter(([, at]) => at.some((place, i) => i > 0 && place < (at[i - 1] ?? 0))).map(([name]) => name),
    ).toEqual([]);
  });

  it('cite only sources that references.ts lists', () => {
    const unknown = functions.flatMap((it) =>
      citationsIn(it.text)
        .filter((key) => key !== 'same' && !(key in references))
        .map((key) => `${it.name}: ${key}`),
    );
    expect(unknown).toEqual([]);
  });

  const examples = functions.flatMap((it) => examplesIn(it.text).map((example) => [it.name, example] as const));
  it.each(examples)('%s gives what its example says', (_, { expression, sign, answer }) => {
    const value = valueOf(expression);
    if (sign === '=') expect(value).toEqual(valueOf(answer));
    else expect(Math.abs(Number(value) - Number(answer))).toBeLessThanOrEqual(tolerance(answer) * (1 + 1e-9));
  });

  it('leave no example without its answer', () => {
    const bare = functions.filter((it) =>
      it.text
        .split('@example')
        .slice(1)
        .some((part) => !/\/\/ [=≈] \S/.test(part)),
    );
    expect(bare.map((it) => it.name)).toEqual([]);
  });
});
