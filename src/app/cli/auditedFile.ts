import type { Audited } from '../logs/auditBook.js';

/** One system of one log of one file, audited. */
export interface AuditedFile {
  readonly file: string;
  readonly audited: Audited;
}

/** A file that could not be audited, and why. */
export interface FileRefused {
  readonly file: string;
  readonly message: string;
}
