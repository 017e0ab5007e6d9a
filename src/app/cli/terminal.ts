/** Where a command writes, and to whom. */
export interface Terminal {
  /** Answers. */
  out(text: string): void;
  /** Refusals and remarks. */
  err(text: string): void;
  /** Columns of the terminal a person reads; undefined: a file or another program reads. */
  readonly columns: number | undefined;
  /** A bar while several files are worked on. */
  progress(files: number): Progress;
}

export interface Progress {
  step(name: string): void;
  end(): void;
}

/** What a command ends with. */
export const exitCode = { done: 0, danger: 1, refused: 2 } as const;
export type ExitCode = (typeof exitCode)[keyof typeof exitCode];
