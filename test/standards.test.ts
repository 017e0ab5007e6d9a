import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

/** The words that a checker prints when it objects; '' when it is content. */
function objections(script: string, args: readonly string[]): string {
  const run = spawnSync(process.execPath, [resolve('node_modules', script), ...args], { encoding: 'utf8' });
  return run.status === 0 ? '' : `${run.stdout}${run.stderr}`;
}

describe('every file', () => {
  it('agrees with the compiler', () => {
    expect(objections('typescript/bin/tsc', ['-p', '.'])).toBe('');
  }, 120_000);

  it('agrees with the linter', () => {
    expect(objections('eslint/bin/eslint.js', ['-c', '.eslint.config.mjs', '--max-warnings', '0', '.'])).toBe('');
  }, 120_000);

  it('is laid out by the formatter', () => {
    expect(objections('prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.'])).toBe('');
  }, 120_000);
});
