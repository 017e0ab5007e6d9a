import { examples } from '../../functions/examples.js';
import { standInHost, type Answer, type ArgumentIn, type CellIn } from '../host/standInHost.js';
import { callIn } from './callIn.js';

const host = standInHost();

/** What a host may hand over for an empty cell. */
const blanks: readonly CellIn[] = [null, '', 0];

/** Whether an argument is blank, and which cells of a range are, in every way of writing a blank. */
function withBlank(args: readonly ArgumentIn[], blank: CellIn): ArgumentIn[] {
  const cell = (one: CellIn): CellIn => (one === null || one === '' ? blank : one);
  return args.map((arg) =>
    Array.isArray(arg) ? (arg as CellIn[][]).map((row) => row.map(cell)) : cell(arg as CellIn),
  );
}

const sameFor = (id: string, args: readonly ArgumentIn[]): void => {
  const [first, ...others] = blanks.map((blank): Answer => host.call(id, ...withBlank(args, blank)));
  expect(first).not.toHaveProperty('error');
  for (const other of others) expect(other).toEqual(first);
};

describe('a blank as null, as "" and as 0', () => {
  it.each(examples.map(({ name, formula }) => [name, formula] as const))(
    'is the same for the example of %s',
    (name, formula) => {
      const takes = host.metadata.functions.find(({ id }) => id === name)?.parameters.length ?? 0;
      const { given } = callIn(formula);
      sameFor(
        name,
        Array.from({ length: takes }, (_, at) => (given[at] === undefined ? null : (given[at] as ArgumentIn))),
      );
    },
  );

  const log: CellIn[][] = [
    ['When', 'Cu', 'Dose mL', 'WC L', 'Fish in', 'Dead', 'Signs', 'Note'],
    [46082.3, '<0.05', 11, null, '3 clownfish', null, null, 'baseline'],
    [46082.8, 0.54, 11, null, null, null, null, null],
    [46083.3, 1.1, 11, null, null, null, null, null],
    [46083.8, 1.62, 12, null, null, null, 'not eating', 'ammonia clean'],
    [46084.3, 2.2, null, null, null, null, 'eating', null],
    [46085.3, null, null, 20, null, null, null, 'no test, away; matched'],
    [46086.3, 2.18, null, null, null, '1 clownfish', null, null],
    [46087.3, 2.21, null, null, null, null, null, 'all well'],
    [null, null, null, null, null, null, null, null],
  ];
  const card: CellIn[][] = [
    ['Volume', 200],
    ['Form', 'chelated'],
    ['Strength', 10],
    ['Doses a day', null],
    ['Aim', null],
    ['Disease', null],
  ];

  it.each(['HEADINGS', 'LEVELS', 'AUDIT', 'DONOW', 'READY', 'FISHDAYS', 'DEATHS'])(
    'is the same in a log for %s',
    (name) => {
      const takes = host.metadata.functions.find(({ id }) => id === name)?.parameters.length ?? 0;
      sameFor(name, [log, card, 46087.5].slice(0, takes));
    },
  );

  it('is the same in several systems', () => {
    const systems = log.map((row, at): CellIn[] => [at === 0 ? 'Tank' : row[0] === null ? null : 'North', ...row]);
    const cards: CellIn[][] = [
      ['System', 'Volume', 'Form', 'Strength', 'Pace'],
      ['North', 200, 'chelated', 10, null],
    ];
    sameFor('SYSTEMS', [systems, cards, 46087.5]);
  });
});
