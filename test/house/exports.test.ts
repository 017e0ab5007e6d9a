import ts from 'typescript';
import { floors } from './floors.js';
import { exportsOf, sourcesIn, type Source } from './sources.js';

const sources = sourcesIn(['src', 'functions']);
const edges = sources.flatMap(({ imports }) => imports);

/** Rooms of formulas from the literature: a rival stays for the test that compares it with the published values. */
const formulaRooms = ['ammonia', 'chemistry', 'seawater', 'volume', 'water'];
const byTests = new Set(
  sourcesIn(['test/engine']).flatMap(({ imports }) =>
    imports.flatMap(({ from, to, names = [] }) => {
      const room = formulaRooms.find((each) => from.startsWith(`test/engine/${each}/`));
      return room !== undefined && to.startsWith(`src/engine/${room}/`) ? names.map((name) => `${to}: ${name}`) : [];
    }),
  ),
);

/** An exported function with a source of its own, which the test of its own room calls. */
function isTestedRival({ file, syntax }: Source, name: string): boolean {
  return syntax.statements.some(
    (node) =>
      ts.isFunctionDeclaration(node) &&
      node.name?.text === name &&
      /^ \* Source: /m.test(node.getFullText()) &&
      byTests.has(`${file}: ${name}`),
  );
}

/** Read by a program rather than by a file: a cell function by the bundle's entry and the generator of metadata. */
function isCellFunction({ syntax }: Source, name: string): boolean {
  return syntax.statements.some(
    (node) =>
      ts.isFunctionDeclaration(node) && node.name?.text === name && /^ \* @customfunction /m.test(node.getFullText()),
  );
}

describe('exports', () => {
  it('are imported by another file, every one', () => {
    const taken = new Map<string, Set<string>>();
    const whole = new Set<string>();
    for (const { to, names } of edges) {
      if (names === undefined) whole.add(to);
      else taken.set(to, new Set([...(taken.get(to) ?? []), ...names]));
    }
    const unused = sources
      .filter(({ file }) => !whole.has(file) && file !== 'functions/examples.ts')
      .flatMap((source) =>
        exportsOf(source)
          .filter((name) => taken.get(source.file)?.has(name) !== true)
          .filter((name) => !isTestedRival(source, name) && !isCellFunction(source, name))
          .map((name) => `${source.file}: ${name}`),
      );
    expect(unused).toEqual([]);
  });

  it('that a door hands on are wanted by another floor', () => {
    const doors = floors.flatMap((floor) => floor.doors ?? []);
    const whole = edges.filter(({ from, names }) => doors.includes(from) && names === undefined);
    expect(whole.map(({ from, to }) => `${from} hands on all of ${to}`)).toEqual([]);
    const unwanted = doors.flatMap((door) => {
      const given = edges.filter(({ from }) => from === door).flatMap(({ names }) => names ?? []);
      expect(given.length).toBeGreaterThan(0);
      const taken = new Set(edges.filter(({ to }) => to === door).flatMap(({ names }) => names ?? []));
      return given.filter((name) => !taken.has(name)).map((name) => `${door}: ${name}`);
    });
    expect(unwanted).toEqual([]);
  });
});
