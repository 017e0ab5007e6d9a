/** `npm test`: everything is built, then jest runs, whose last line is the count. A build that fails is a failed test. */
const { spawnSync } = require('node:child_process');

const build = spawnSync('npm run build', { stdio: 'inherit', shell: true });
if (build.status !== 0) {
  process.stdout.write('the build failed\n0 passed, 1 failed\n');
  process.exit(1);
}
const jest = spawnSync(process.execPath, [require.resolve('jest/bin/jest'), ...process.argv.slice(2)], {
  stdio: 'inherit',
});
process.exit(jest.status ?? 1);
