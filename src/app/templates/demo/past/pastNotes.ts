import { answerTable, bodies, line } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';

/** What the keeper wrote in words, and how it was understood. */
export const pastNotes = demoSheet({
  name: 'Past notes',
  title: 'What the keeper wrote in words, and how it was understood',
  frozenRows: 4,
  parts: [
    line('A2', 'One formula, in A4. A text that was not understood was judged by nobody: read it yourself.', 'aside'),
    answerTable({
      at: 'A4',
      id: 'NOTES',
      given: '{Past log!log+}',
      columns: { When: 132, Row: 46, Text: 400, 'Read as': 240, 'Used for': 240 },
      room: 75,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
