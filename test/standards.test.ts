import { spawn } from 'node:child_process';
import { resolve } from 'node:path';

/** What a checker prints, and whether it ended content. */
function checked(script: string, args: readonly string[] = []): Promise<{ printed: string; isContent: boolean }> {
  return new Promise((done) => {
    const run = spawn(process.execPath, [resolve(script), ...args]);
    let printed = '';
    for (const stream of [run.stdout, run.stderr]) stream.on('data', (chunk: Buffer) => (printed += chunk.toString()));
    run.on('close', (code) => done({ printed, isContent: code === 0 }));
  });
}

describe('every file', () => {
  let objections: { readonly compiler: string; readonly linter: string };

  beforeAll(async () => {
    const { printed, isContent } = await checked('test/jest/compilerAndLinter.mjs');
    if (!isContent) throw new Error(printed);
    objections = JSON.parse(printed);
  }, 180_000);

  it('agrees with the compiler', () => {
    expect(objections.compiler).toBe('');
  });

  it('agrees with the linter', () => {
    expect(objections.linter).toBe('');
  });

  it('is laid out by the formatter', async () => {
    const asked = ['--check', '--log-level', 'warn', '.'];
    const { printed, isContent } = await checked('node_modules/prettier/bin/prettier.cjs', asked);
    expect([isContent, printed]).toEqual([true, '']);
  }, 120_000);
});
