import { existsSync, readdirSync } from 'node:fs';
import { floors, tradeWords, type Floor } from './floors.js';
import { globalsIn, sourcesIn, type Import } from './sources.js';

const sources = sourcesIn(['src', 'functions']);
const files = new Set(sources.map(({ file }) => file));
const edges = sources.flatMap(({ imports }) => imports);
const floorOf = (file: string): Floor | undefined => floors.find(({ folder }) => file.startsWith(`${folder}/`));
const roomOf = (file: string, { folder }: Floor): string => file.slice(folder.length + 1).split('/')[0] ?? '';
const isStyle = (file: string): boolean => /\.(?:css|html)$/.test(file) && existsSync(file);
const shown = (wrong: readonly Import[]): string[] => wrong.map(({ from, to }) => `${from} → ${to}`);

describe('the house', () => {
  it('is read from real files and imports, each of which is there, and each file is on a floor', () => {
    for (const { folder } of floors) {
      const own = sources.filter(({ file }) => file.startsWith(`${folder}/`));
      expect(own.length).toBeGreaterThan(1);
      if (folder !== 'src/base') expect(own.flatMap(({ imports }) => imports).length).toBeGreaterThan(10);
    }
    expect(shown(edges.filter(({ to }) => floorOf(to) !== undefined && !files.has(to) && !isStyle(to)))).toEqual([]);
    expect([...files].filter((file) => floorOf(file) === undefined)).toEqual([]);
  });

  it('has no code but TypeScript, which these tests read, and the two scripts that build the add-in', () => {
    const everyFile = ['src', 'functions'].flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => `${folder}/${name}`),
    );
    const unread = everyFile.filter((file) => /\.[cm]?[jt]sx?$/.test(file) && !files.has(file));
    expect(unread.filter((file) => !/^src\/app\/addin\/\w+\.cjs$/.test(file))).toEqual([]);
  });

  it('takes nothing from outside but packages, and for the documents the picture of itself', () => {
    const outside = edges.filter(({ to, isPath }) => isPath && floorOf(to) === undefined && !isStyle(to));
    const picture = 'src/app/cli/docs/generatedParts.ts → test/house/housePicture.ts';
    expect(shown(outside).filter((edge) => edge !== picture)).toEqual([]);
  });

  it('has no import cycle', () => {
    const done = new Set<string>();
    const cycles = [...files].map((file) => cycleFrom(file, [], done)).filter((cycle) => cycle !== undefined);
    expect(cycles).toEqual([]);
  });

  it('has nothing but the tables of the README read the examples of the cell functions', () => {
    const readers = edges.filter(({ from, to }) => to === 'functions/examples.ts' && !from.startsWith('functions/'));
    expect(readers.length).toBeGreaterThan(0);
    expect(shown(readers.filter(({ from }) => !from.startsWith('src/app/cli/docs/')))).toEqual([]);
  });
});

describe.each(floors)('$folder', (floor) => {
  const own = sources.filter(({ file }) => floorOf(file) === floor);
  const leaving = own.flatMap(({ imports }) => imports).filter(({ to }) => floorOf(to) !== floor);

  it('knows only the floors it may know, each by its door', () => {
    const allowed = (to: string): boolean => {
      const target = floorOf(to);
      if (target === undefined) return true;
      return floor.knows.includes(target.folder) && target.doors?.includes(to) !== false;
    };
    const fromExamples = ({ from, to }: Import): boolean =>
      to === 'functions/examples.ts' && from.startsWith('src/app/cli/docs/');
    expect(shown(leaving.filter((edge) => !allowed(edge.to) && !fromExamples(edge)))).toEqual([]);
  });

  it('has every room in a layer, and imports pointing one way', () => {
    if (floor.layers.length === 0) {
      expect(own.map(({ file }) => file).filter((file) => roomOf(file, floor) !== file.split('/').at(-1))).toEqual([]);
      return;
    }
    const layerOf = (file: string): number => floor.layers.findIndex((layer) => layer.includes(roomOf(file, floor)));
    expect(own.map(({ file }) => file).filter((file) => layerOf(file) < 0)).toEqual([]);
    expect(floor.layers.flat().filter((room) => !existsSync(`${floor.folder}/${room}`))).toEqual([]);
    const inside = own.flatMap(({ imports }) => imports).filter(({ to }) => floorOf(to) === floor);
    const wrong = inside.filter(
      ({ from, to }) => roomOf(from, floor) !== roomOf(to, floor) && layerOf(to) >= layerOf(from),
    );
    expect(shown(wrong)).toEqual([]);
  });

  it('imports only the packages it may', () => {
    const { packages } = floor;
    const outside = leaving.filter(({ to }) => floorOf(to) === undefined);
    if (packages === undefined) return expect(outside.length).toBeGreaterThan(0);
    expect(shown(outside.filter(({ to }) => !packages.includes(to)))).toEqual([]);
  });

  it('is as pure as the table says', () => {
    const unknown = new Set(floor.unknown);
    const found = own.flatMap((source) =>
      globalsIn(source)
        .filter((name) => unknown.has(name))
        .map((name) => `${source.file}: ${name}`),
    );
    expect(found).toEqual([]);
  });
});

describe('src/sheet', () => {
  it('knows nothing of the trade: not a word of it stands there, in code or comment', () => {
    const own = sources.filter(({ file }) => file.startsWith('src/sheet/'));
    const found = own.flatMap(({ file, syntax }) =>
      syntax.text
        .split('\n')
        .filter((line) => tradeWords.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
    expect(found).toEqual([]);
  });
});

const importsByFile = new Map(sources.map(({ file, imports }) => [file, imports.map(({ to }) => to)]));

/** A way round from a file back to itself, if there is one. */
function cycleFrom(file: string, way: readonly string[], done: Set<string>): string[] | undefined {
  if (way.includes(file)) return [...way.slice(way.indexOf(file)), file];
  if (done.has(file)) return undefined;
  for (const next of importsByFile.get(file) ?? []) {
    const cycle = cycleFrom(next, [...way, file], done);
    if (cycle !== undefined) return cycle;
  }
  done.add(file);
  return undefined;
}
