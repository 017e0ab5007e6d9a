/**
 * A stand-in for the spreadsheet program: it loads the bundle that people get, in a context with nothing but the
 * language and a `CustomFunctions`, and calls it as the host does.
 */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { createContext, Script } from 'node:vm';

/** What a cell may hold when it comes in: the host also knows rich cells and two shapes of error. */
export type CellIn = number | string | boolean | null | undefined | object;
export type ArgumentIn = CellIn | readonly (readonly CellIn[])[];

export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: 'scalar' | 'matrix';
  readonly optional?: boolean;
  readonly repeating?: boolean;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly type?: string; readonly dimensionality?: 'scalar' | 'matrix' };
  readonly options?: Readonly<Record<string, boolean>>;
}

export interface Metadata {
  readonly allowCustomDataForDataTypeAny?: boolean;
  readonly allowErrorForDataTypeAny?: boolean;
  readonly functions: readonly FunctionMetadata[];
}

/** What a cell shows when a function throws: only these two codes carry a sentence. */
export interface CellError {
  readonly error: '#VALUE!' | '#N/A' | '#NUM!' | '#DIV/0!' | '#NULL!' | '#REF!' | '#NAME?';
  readonly message?: string | undefined;
}
export type Scalar = number | string | boolean;
export type Answer = Scalar | Scalar[][] | CellError;

type Implementation = (...args: unknown[]) => unknown;

const errorCodes = {
  divisionByZero: '#DIV/0!',
  invalidName: '#NAME?',
  invalidNumber: '#NUM!',
  invalidReference: '#REF!',
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  nullReference: '#NULL!',
} as const;

/** The host's error class: a code, and a sentence of one's own for #VALUE! and #N/A alone. */
export class HostError extends Error {
  constructor(
    readonly code: CellError['error'],
    message?: string,
  ) {
    super(message ?? '');
  }
}

export interface StandInHost {
  readonly metadata: Metadata;
  /** The ids that the bundle associated, in its order. */
  readonly associated: readonly string[];
  /** The answer as a cell would get it; throws where the host would get something that it cannot show. */
  call(id: string, ...args: readonly ArgumentIn[]): Answer;
  /** The same without looking over arguments and answer, for measuring. */
  callBare(id: string, ...args: readonly ArgumentIn[]): unknown;
}

const dist = (file: string): string => readFileSync(resolve('dist', file), 'utf8');

export function standInHost(script = dist('functions.js'), json = dist('functions.json')): StandInHost {
  const metadata = JSON.parse(json) as Metadata;
  const implementations = new Map<string, Implementation>();
  const associate = (id: string, implementation: Implementation): void => {
    if (implementations.has(id)) throw new Error(`${id} is associated twice`);
    implementations.set(id, implementation);
  };
  const context = createContext({ CustomFunctions: { associate, Error: HostError, ErrorCode: errorCodes } });
  new Script(script, { filename: 'functions.js' }).runInContext(context);

  const described = new Map(metadata.functions.map((entry) => [entry.id, entry]));
  const marshalled = (id: string, args: readonly ArgumentIn[]): [Implementation, unknown[]] => {
    const entry = described.get(id);
    const implementation = implementations.get(id);
    if (entry === undefined || implementation === undefined) throw new Error(`#NAME? ${id}`);
    return [implementation, [...argumentsAsSent(entry, args), { functionName: id }]];
  };
  const callBare = (id: string, ...args: readonly ArgumentIn[]): unknown => {
    const [implementation, sent] = marshalled(id, args);
    return implementation(...sent);
  };
  return {
    metadata,
    associated: [...implementations.keys()],
    callBare,
    call(id, ...args) {
      const [implementation, sent] = marshalled(id, args);
      try {
        return answerAsShown(id, implementation(...sent));
      } catch (thrown) {
        if (!(thrown instanceof HostError)) throw thrown;
        const tells = thrown.code === '#VALUE!' || thrown.code === '#N/A';
        return { error: thrown.code, message: tells && thrown.message !== '' ? thrown.message : undefined };
      }
    },
  };
}

/** Omitted optional arguments are null, a single cell given to a range comes as [[v]], and too few or too many are refused. */
function argumentsAsSent(entry: FunctionMetadata, args: readonly ArgumentIn[]): unknown[] {
  if (args.length > entry.parameters.length)
    throw new Error(`${entry.id} takes at most ${entry.parameters.length} arguments`);
  return entry.parameters.map((parameter, i) => {
    const given = args[i];
    if (given === undefined) {
      if (parameter.optional !== true) throw new Error(`${entry.id} needs ${parameter.name}`);
      return null;
    }
    if (parameter.dimensionality === 'matrix') return Array.isArray(given) || given === null ? given : [[given]];
    return given;
  });
}

/** What the host would show wrongly, or not at all, is a fault of ours: NaN, null, a Date, a ragged or an empty array. */
function answerAsShown(id: string, answer: unknown): Scalar | Scalar[][] {
  if (!Array.isArray(answer)) return scalarAsShown(id, answer);
  const rows: unknown[] = answer;
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  if (width === 0) throw new Error(`${id} gives an empty array`);
  const shown = rows.map((row) => {
    if (!Array.isArray(row) || row.length !== width) throw new Error(`${id} gives a ragged array`);
    return row.map((cell) => scalarAsShown(id, cell));
  });
  if (JSON.stringify(shown).length > 2_000_000) throw new Error(`${id} gives more than the host delivers`);
  return shown;
}

function scalarAsShown(id: string, value: unknown): Scalar {
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  throw new Error(`${id} gives ${String(value)}, which no cell can show`);
}
