import { FileProblem } from '../../../src/sheet/zip/fileProblem';

/** The sentence a file is refused with; it fails where the file is taken or something else is thrown. */
export function refusal(read: () => unknown): string {
  try {
    read();
  } catch (error) {
    if (!(error instanceof FileProblem)) throw error;
    expect(error.message).toMatch(/^[A-Z][^\n]*\.$/);
    expect(error.message.length).toBeLessThanOrEqual(220);
    return error.message;
  }
  throw new Error('the file was taken');
}
