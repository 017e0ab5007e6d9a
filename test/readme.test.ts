import { existsSync, readFileSync } from 'node:fs';
import { examples } from '../functions/examples.js';
import { generatedParts, withGeneratedPart } from '../src/app/cli/docs/generatedParts.js';
import type { FunctionCatalogue } from '../src/app/calls/functionCatalogue.js';

const readme = readFileSync('README.md', 'utf8');
const developers = readFileSync('DEVELOPERS.md', 'utf8');
const catalogue = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as FunctionCatalogue;
const { scripts, dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as Record<
  'scripts' | 'dependencies' | 'devDependencies',
  Record<string, string>
>;
/** Text in backquotes, of one line. */
const quoted = (text: string): string[] => [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? '');

describe('README.md', () => {
  it('has a row for every cell function', () => {
    const rows = [...readme.matchAll(/^\| `([A-Z]+)\(/gm)].map((match) => match[1]);
    expect(rows.length).toBeGreaterThan(25);
    expect([...rows].sort()).toEqual(catalogue.functions.map(({ name }) => name).sort());
  });

  it('opens with the job in a paragraph, then a picture and the two commands, before any heading; then the cautions', () => {
    const [title, job] = readme.split('\n\n');
    expect(title).toBe('# Lazaret');
    for (const words of ['copper', '14 or 30 days', 'day one', 'narrow margin', 'spreadsheet'])
      expect(job).toContain(words);
    const [firstScreen = '', cautions = ''] = readme.split(/^## /m);
    expect(firstScreen).toMatch(/!\[.+\]\(.+\.png\)/);
    expect(firstScreen).toContain('npm ci && npm start');
    expect(firstScreen).toContain('npm cit');
    expect(cautions).toMatch(/^Cautions\n/);
  });

  it('quotes only functions that there are', () => {
    const named = [...`${readme}${developers}`.matchAll(/QT\.([A-Z]+)/g)].map((match) => match[1] ?? '');
    expect(named.length).toBeGreaterThan(examples.length);
    const names = catalogue.functions.map(({ name }) => name);
    expect(named.filter((name) => !names.includes(name))).toEqual([]);
  });
});

describe.each([
  ['README.md', readme],
  ['DEVELOPERS.md', developers],
])('%s', (_, text) => {
  it('names only scripts and files that there are', () => {
    const run = [...text.matchAll(/npm run ([a-z-]+)/g)].map((match) => match[1] ?? '');
    expect(run.length).toBeGreaterThan(0);
    expect(run.filter((script) => !(script in scripts))).toEqual([]);
    const paths = quoted(text).filter((word) => /^(src|functions|test|\.ci)\/[\w./-]+$/.test(word));
    const links = [...text.matchAll(/\]\(([^)#:]+)\)/g)].map((match) => match[1] ?? '');
    expect([...paths, ...links].length).toBeGreaterThan(0);
    expect([...paths, ...links].filter((path) => !existsSync(path))).toEqual([]);
  });

  it('calls nothing safe, clean or cured', () => {
    expect(text.match(/\b(safe|safely|clean|cured?)\b/gi)).toBeNull();
  });
});

describe('DEVELOPERS.md', () => {
  it('says why each package is there', () => {
    const packages = Object.keys({ ...dependencies, ...devDependencies });
    // A line may name several that are there for one reason; each is followed by its licence or shares the next one's.
    const listed = developers.slice(developers.indexOf('\n## Packages'), developers.indexOf('\n## Traps'));
    const lines = listed.split(/\n(?=- )/).slice(1);
    expect(lines.filter((line) => !/^- `.+\): \S/s.test(line))).toEqual([]);
    const rows = lines.flatMap((line) =>
      [...(line.split('): ')[0] ?? '').matchAll(/`([^`]+)`/g)].map((match) => match[1]),
    );
    expect(packages.filter((name) => !rows.includes(name))).toEqual([]);
    expect(rows.filter((name) => !packages.includes(name ?? ''))).toEqual([]);
  });
});

describe('what npm run docs writes', () => {
  it.each(generatedParts(catalogue))('stands in $file: $name', (part) => {
    const document = part.file === 'README.md' ? readme : developers;
    expect(part.text.length).toBeGreaterThan(200);
    expect(document).toBe(withGeneratedPart(document, part));
  });
});

describe('withGeneratedPart', () => {
  const functions = (text: string) => ({ name: 'functions', text });
  const [begin, end] = ['<!-- functions: written by npm run docs -->', '<!-- end of functions -->'];

  it('replaces what stands between the markers and nothing else', () => {
    expect(withGeneratedPart(`a\n${begin}\nold\n${end}\nz`, functions('new'))).toBe(`a\n${begin}\n\nnew\n\n${end}\nz`);
    expect(withGeneratedPart(`a${begin}${end}z`, functions('$& $1'))).toBe(`a${begin}\n\n$& $1\n\n${end}z`);
  });

  it('throws where a marker is missing or doubled', () => {
    for (const text of ['a', begin, end, `${end}${begin}`, `${begin}${end}${end}`, `${begin}${begin}${end}`]) {
      expect(() => withGeneratedPart(text, functions('new'))).toThrow('once each');
    }
  });
});
