import { readdirSync, readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import ts from 'typescript';

const root = resolve('.');

/** A file of ours: its syntax, and the names it takes from elsewhere. */
export interface Source {
  readonly file: string;
  readonly syntax: ts.SourceFile;
  readonly imports: readonly Import[];
}

export interface Import {
  readonly from: string;
  /** A file of ours as a path from the root, a package by its name. */
  readonly to: string;
  /** The names taken; undefined: all of them. */
  readonly names: readonly string[] | undefined;
}

export function sourcesIn(folders: readonly string[]): Source[] {
  return folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
      .sort()
      .map((name) => {
        const file = `${folder}/${name}`;
        const syntax = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
        return { file, syntax, imports: importsOf(file, syntax) };
      }),
  );
}

export function everyNode(source: ts.Node, visit: (node: ts.Node) => void): void {
  visit(source);
  source.forEachChild((child) => everyNode(child, visit));
}

/** What a file imports or exports from, plain or dynamic. */
function importsOf(file: string, syntax: ts.SourceFile): Import[] {
  const found: Import[] = [];
  everyNode(syntax, (node) => {
    const declared = (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier;
    const called =
      ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword && node.arguments[0];
    const typed = ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && node.argument.literal;
    const name = declared || called || typed || undefined;
    if (name === undefined || !ts.isStringLiteral(name)) return;
    found.push({ from: file, to: pathOf(file, name.text), names: namesIn(node) });
  });
  return found;
}

function pathOf(file: string, name: string): string {
  return name.startsWith('.') ? relative(root, resolve(dirname(file), name)).replace(/\.js$/, '.ts') : name;
}

function namesIn(node: ts.Node): readonly string[] | undefined {
  const elements =
    ts.isImportDeclaration(node) &&
    node.importClause?.namedBindings &&
    ts.isNamedImports(node.importClause.namedBindings)
      ? node.importClause.namedBindings.elements
      : ts.isExportDeclaration(node) && node.exportClause && ts.isNamedExports(node.exportClause)
        ? node.exportClause.elements
        : undefined;
  if (elements !== undefined) return elements.map((element) => (element.propertyName ?? element.name).text);
  // `import('./x.js').then(({ a }) => …)` and `const { a } = await import('./x.js')`
  const holder = ts.isCallExpression(node)
    ? ts.isAwaitExpression(node.parent)
      ? node.parent.parent
      : undefined
    : undefined;
  if (holder && ts.isVariableDeclaration(holder) && ts.isObjectBindingPattern(holder.name)) {
    return holder.name.elements.map((element) => (element.propertyName ?? element.name).getText());
  }
  if (ts.isImportTypeNode(node) && node.qualifier) return [node.qualifier.getText().split('.')[0] ?? ''];
  return undefined;
}

/** The names a file exports itself; what it hands on from others is not among them. */
export function exportsOf({ syntax }: Source): string[] {
  return syntax.statements.flatMap((node) => {
    const isExported =
      ts.canHaveModifiers(node) &&
      ts.getModifiers(node)?.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword) === true;
    if (!isExported) return [];
    if (ts.isVariableStatement(node)) return node.declarationList.declarations.map((one) => one.name.getText());
    const named = node as ts.DeclarationStatement;
    return named.name === undefined ? [] : [named.name.getText()];
  });
}
