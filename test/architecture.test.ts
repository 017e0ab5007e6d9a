import { readdirSync, readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import ts from 'typescript';

/** Folders of one layer stand together; imports point to an earlier layer or stay in the folder. */
const layers = [
  ['references'],
  ['result'],
  ['units'],
  ['chemistry', 'volume', 'seawater', 'fish'],
  ['dose', 'ammonia'],
  ['water'],
  ['log'],
  ['level'],
  ['hold'],
  ['chance'],
  ['rules', 'plan'],
  ['audit', 'selfcheck'],
  ['text'],
  ['index.ts'],
];
const layerOf = (file: string): number => layers.findIndex((layer) => layer.includes(file.split('/')[1] ?? ''));

const root = resolve('.');
const files = ['src', 'functions'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
    .map((name) => `${folder}/${name}`),
);
const parsed = new Map(
  files.map((file) => [file, ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true)]),
);

function everyNode(source: ts.Node, visit: (node: ts.Node) => void): void {
  visit(source);
  source.forEachChild((child) => everyNode(child, visit));
}

/** Names of what a file imports or exports from, plain or dynamic: files of ours as paths from the root, packages as they stand. */
function importsOf(file: string, source: ts.SourceFile): string[] {
  const names: string[] = [];
  everyNode(source, (node) => {
    const declared = (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier;
    const called =
      ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword && node.arguments[0];
    const name = declared || called || undefined;
    if (name !== undefined && ts.isStringLiteral(name)) names.push(name.text);
  });
  return names.map((name) =>
    name.startsWith('.') ? relative(root, resolve(dirname(file), name)).replace(/\.js$/, '.ts') : name,
  );
}

const imports = new Map([...parsed].map(([file, source]) => [file, importsOf(file, source)]));
const edges = [...imports].flatMap(([from, names]) => names.map((to) => [from, to] as const));
const isEngine = (file: string): boolean => file.startsWith('src/') && !file.startsWith('src/shell/');
const isOurs = (name: string): boolean => /^(src|functions)\//.test(name);

/** A way round from a file back to itself, if there is one. */
function cycleFrom(file: string, way: readonly string[] = [], done = new Set<string>()): string[] | undefined {
  if (way.includes(file)) return [...way.slice(way.indexOf(file)), file];
  if (done.has(file)) return undefined;
  for (const next of imports.get(file) ?? []) {
    const cycle = cycleFrom(next, [...way, file], done);
    if (cycle !== undefined) return cycle;
  }
  done.add(file);
  return undefined;
}

describe('the architecture', () => {
  it('is read from real files and imports, each of which is there', () => {
    expect(files.filter(isEngine).length).toBeGreaterThan(20);
    expect(edges.length).toBeGreaterThan(50);
    expect(edges.filter(([, to]) => isOurs(to) && /\.ts$/.test(to) && !parsed.has(to))).toEqual([]);
  });

  it('has every file of the engine in a layer, and imports pointing one way', () => {
    expect(files.filter(isEngine).filter((file) => layerOf(file) < 0)).toEqual([]);
    const wrong = edges.filter(([from, to]) => {
      const inside = isEngine(from) && isEngine(to) && from.split('/')[1] !== to.split('/')[1];
      return inside && layerOf(to) >= layerOf(from);
    });
    expect(wrong.map((edge) => edge.join(' → '))).toEqual([]);
  });

  it('has no import cycle', () => {
    const done = new Set<string>();
    expect(files.map((file) => cycleFrom(file, [], done)).filter((cycle) => cycle !== undefined)).toEqual([]);
  });

  it('lets shells and cell functions reach the engine through src/index.ts alone', () => {
    const outside = edges.filter(([from, to]) => !isEngine(from) && isEngine(to));
    expect(outside.length).toBeGreaterThan(0);
    expect(outside.filter(([, to]) => to !== 'src/index.ts').map((edge) => edge.join(' → '))).toEqual([]);
    expect(edges.filter(([from, to]) => isEngine(from) && isOurs(to) && !isEngine(to))).toEqual([]);
  });

  it('keeps the engine pure: no package that touches the world, no clock, no chance, no page', () => {
    const pure = ['fastest-levenshtein'];
    const packages = edges.filter(([from, to]) => isEngine(from) && !isOurs(to) && !pure.includes(to));
    expect(packages.map((edge) => edge.join(' → '))).toEqual([]);
    const impure = [
      'Date',
      'process',
      'performance',
      'globalThis',
      'window',
      'document',
      'fetch',
      'setTimeout',
      'require',
    ];
    const found: string[] = [];
    for (const [file, source] of parsed) {
      if (!isEngine(file)) continue;
      everyNode(source, (node) => {
        const word = ts.isIdentifier(node) && impure.includes(node.text);
        const random = ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random';
        if (word || random) found.push(`${file}: ${node.getText()}`);
      });
    }
    expect(found).toEqual([]);
  });
});
