/**
 * Where everything stands: the floors of the house, the layers of rooms on each, and what each may know. The tests in this
 * folder read the imports against this table, and the picture in DEVELOPERS.md is written from it.
 */
export interface Floor {
  readonly folder: string;
  /** What lives there, for the picture. */
  readonly holds: string;
  /** The floors it may import from, each through its door where it has one. */
  readonly knows: readonly string[];
  /** The files other floors may import; undefined: any. */
  readonly doors?: readonly string[];
  /** Rooms of one layer do not import each other; imports point to an earlier layer or stay in the room. */
  readonly layers: readonly (readonly string[])[];
  /** Packages it may import; undefined: any. */
  readonly packages?: readonly string[];
  /** Words that may not stand in its code: names of globals, and what it is to know nothing of. */
  readonly unknown?: readonly string[];
}

/** What makes an answer depend on when and where it is worked out. */
const world = [
  ...['Date', 'Intl', 'process', 'performance', 'crypto', 'globalThis', 'window', 'self', 'document', 'navigator'],
  ...['fetch', 'setTimeout', 'setInterval', 'queueMicrotask', 'localStorage', 'console', 'require', 'eval', 'random'],
];

export const floors: readonly Floor[] = [
  {
    folder: 'src/base',
    holds: 'the few pure things that engine and sheet both need: serial days',
    knows: [],
    layers: [],
    packages: [],
    unknown: world,
  },
  {
    folder: 'src/engine',
    holds: 'the arithmetic and the rules of a copper quarantine; pure',
    knows: ['src/base'],
    doors: ['src/engine/index.ts'],
    layers: [
      ['references', 'dimensions'],
      ['result'],
      ['units'],
      ['limits'],
      ['chemistry', 'volume', 'seawater', 'fish'],
      ['dose', 'ammonia'],
      ['water'],
      ['log'],
      ['level'],
      ['hold'],
      ['chance'],
      ['words'],
      ['rules', 'plan'],
      ['audit', 'selfcheck'],
      ['judgement'],
      ['text'],
      ['index.ts'],
    ],
    packages: ['fastest-levenshtein'],
    unknown: world,
  },
  {
    folder: 'src/sheet',
    holds: 'files of cells and formulas: read, work out, write; knows nothing of fish',
    knows: ['src/base'],
    doors: ['src/sheet/index.ts', 'src/sheet/library/index.ts'],
    layers: [
      ['cell', 'address', 'zip'],
      ['xml'],
      ['book'],
      ['formula'],
      ['csv', 'xlsx', 'ods'],
      ['read'],
      ['evaluate'],
      ['library'],
      ['run'],
      ['patch'],
      ['recalc'],
      ['index.ts'],
    ],
    packages: ['fflate', 'saxes', '@univerjs/core', '@univerjs/engine-formula'],
    unknown: world.filter((name) => !['Date', 'Intl', 'console', 'setTimeout', 'queueMicrotask'].includes(name)),
  },
  {
    folder: 'functions',
    holds: 'the cell functions: arguments in, one call of the engine, an answer out',
    knows: ['src/engine'],
    layers: [],
    packages: [],
    unknown: world,
  },
  {
    folder: 'src/app',
    holds: 'what people see: page, command line, report, templates, the add-in',
    knows: ['src/engine', 'src/sheet'],
    layers: [['addin', 'serve', 'calls', 'logs'], ['plot'], ['report', 'templates'], ['page', 'cli']],
  },
];

/** Words of the trade, in whatever case: the sheet floor is to know none of them. */
export const tradeWords =
  /copper|quarantin|\bQT\b|_QT_|\bfish|chelat|\btanks?\b|aquari|ammonia|salinity|\bdos(?:e|es|ing)\b|keeper|lazaret/i;
