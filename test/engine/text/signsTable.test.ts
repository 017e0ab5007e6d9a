import { signSteps } from '../../../src/engine/rules/signs/signSteps.js';
import { signsColumns, signsTable } from '../../../src/engine/text/fishTables.js';

describe('signsTable', () => {
  it('is When, Seen as written, and the step in the bare words', () => {
    const texts = [
      { when: 46083.5, row: 3, text: 'eating again' },
      { when: 46082, row: 2, text: 'Not eating, 2.1 ppm' },
      { when: 46084, row: 4, text: '=1+1' },
    ];
    expect(signsTable(signSteps(texts))).toEqual({
      columns: signsColumns,
      rows: [
        [46082, 'Not eating, 2.1 ppm', 'test first'],
        [46083.5, 'eating again', 'raise slowly'],
        [46084, '=1+1', 'unread'],
      ],
    });
  });

  it('has no row where nothing was written', () => {
    expect(signsTable([])).toEqual({ columns: signsColumns, rows: [] });
  });
});
