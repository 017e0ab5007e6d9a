import 'excelize-wasm';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { ChartType, NewFile } from 'excelize-wasm';

/** The writer of workbooks, as far as templates use it. */
export interface Excelize {
  readonly NewFile: () => NewFile;
  /** Its numbers for kinds of charts. */
  readonly Col: ChartType;
  readonly Scatter: ChartType;
}

/** What the package leaves in the global scope: the runtime that its compiled code runs in, and then its functions. */
interface Globals {
  readonly Go: new () => {
    readonly importObject: WebAssembly.Imports;
    run(instance: WebAssembly.Instance): Promise<void>;
  };
  excelize?: Excelize;
}

const compiledName = 'excelize.wasm.gz';
let loaded: Promise<Excelize> | undefined;

/**
 * The writer, loaded once. The package's own start reads the file by an import made up at run time, which not every
 * program that runs this allows; this is the same start with a file read as usual.
 * @param compiled the package's `.wasm.gz`; if left out, beside this program, else in the nearest `node_modules`
 */
export function loadExcelize(compiled?: string): Promise<Excelize> {
  loaded ??= started(compiled ?? compiledNear(__dirname));
  return loaded;
}

async function started(compiled: string): Promise<Excelize> {
  const globals = globalThis as unknown as Globals;
  const go = new globals.Go();
  globals.excelize = {} as Excelize;
  const bytes = new Uint8Array(gunzipSync(readFileSync(compiled)));
  const { instance } = await WebAssembly.instantiate(bytes, go.importObject);
  void go.run(instance);
  return globals.excelize;
}

function compiledNear(folder: string): string {
  const beside = join(folder, compiledName);
  if (existsSync(beside)) return beside;
  const installed = join(folder, 'node_modules', 'excelize-wasm', compiledName);
  if (existsSync(installed)) return installed;
  const above = dirname(folder);
  if (above === folder) throw new Error(`${compiledName} is neither beside this program nor in node_modules`);
  return compiledNear(above);
}

/** The writer's answer. If it refuses, the plan is at fault. */
export function done<T extends { readonly error: string | null }>(answer: T, what: string): T {
  if (answer.error !== null) throw new Error(`${what}: ${answer.error}`);
  return answer;
}
