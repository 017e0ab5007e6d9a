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
  /** Written as a path, not as the name of a package. */
  readonly isPath: boolean;
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
    const old =
      ts.isImportEqualsDeclaration(node) &&
      ts.isExternalModuleReference(node.moduleReference) &&
      node.moduleReference.expression;
    const name = declared || called || typed || old || undefined;
    if (name === undefined) return;
    // A name that is put together at run time cannot be checked.
    const text = ts.isStringLiteralLike(name) ? name.text : name.getText();
    found.push({ from: file, to: pathOf(file, text), isPath: /^[./]/.test(text), names: namesIn(node) });
  });
  return found;
}

function pathOf(file: string, name: string): string {
  return /^[./]/.test(name) ? relative(root, resolve(dirname(file), name)).replace(/\.js$/, '.ts') : name;
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
    if (ts.isExportAssignment(node)) return ['default'];
    if (ts.isExportDeclaration(node) && node.moduleSpecifier === undefined) {
      return node.exportClause && ts.isNamedExports(node.exportClause)
        ? node.exportClause.elements.map(({ name }) => name.text)
        : [];
    }
    const isExported =
      ts.canHaveModifiers(node) &&
      ts.getModifiers(node)?.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword) === true;
    if (!isExported) return [];
    if (ts.isVariableStatement(node)) return node.declarationList.declarations.map((one) => one.name.getText());
    const named = node as ts.DeclarationStatement;
    return named.name === undefined ? [] : [named.name.getText()];
  });
}

/**
 * Names that a file uses without declaring them, and so takes from the language or the world: no property names. What
 * draws a number, `Math.random`, is among them as `random`, and so is `Math` where it is handed on whole.
 */
export function globalsIn({ syntax }: Source): string[] {
  const [used, declared] = [new Set<string>(), new Set<string>()];
  everyNode(syntax, (node) => {
    if (!ts.isIdentifier(node)) return;
    const { parent } = node;
    const isName = 'name' in parent && parent.name === node;
    if (ts.isPropertyAccessExpression(parent) && isName) {
      if (parent.expression.getText() === 'Math' && node.text === 'random') used.add('random');
    } else if (isName && !ts.isShorthandPropertyAssignment(parent)) {
      if (isBinding(parent)) declared.add(node.text);
    } else if (!('propertyName' in parent && parent.propertyName === node)) {
      used.add(node.text === 'Math' && !takesKnownParts(parent) ? 'random' : node.text);
    }
  });
  return [...used].filter((name) => !declared.has(name) || name === 'random');
}

function isBinding(node: ts.Node): boolean {
  return (
    ts.isVariableDeclaration(node) ||
    ts.isParameter(node) ||
    ts.isBindingElement(node) ||
    ts.isFunctionDeclaration(node) ||
    ts.isImportSpecifier(node) ||
    ts.isImportClause(node)
  );
}

/** `Math.floor`, or `const { floor, max } = Math` without `random` among them. */
function takesKnownParts(user: ts.Node): boolean {
  if (ts.isPropertyAccessExpression(user)) return true;
  if (!ts.isVariableDeclaration(user) || !ts.isObjectBindingPattern(user.name)) return false;
  return user.name.elements.every(
    ({ name, propertyName, dotDotDotToken }) =>
      dotDotDotToken === undefined && (propertyName ?? name).getText() !== 'random',
  );
}
