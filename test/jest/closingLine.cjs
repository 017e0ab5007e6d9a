/** Jest's own last lines are a table; people and scripts also want the count as one plain line. */
class ClosingLine {
  onRunComplete(_contexts, results) {
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    const skipped = results.numPendingTests + results.numTodoTests;
    const line = `${results.numPassedTests} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
    process.on('exit', () => process.stdout.write(`${line}\n`));
  }
}

module.exports = ClosingLine;
