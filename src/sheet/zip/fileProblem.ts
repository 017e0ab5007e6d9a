/** A file that is refused. The message is one sentence for its owner: what is wrong with it, and what to do. */
export class FileProblem extends Error {
  override readonly name = 'FileProblem';
}
