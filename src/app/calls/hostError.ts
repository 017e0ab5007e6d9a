import type { ErrorCode } from '../../sheet/index.js';

/** `CustomFunctions.Error`: the only thing thrown whose sentence a host keeps. */
export class HostError extends Error {
  readonly code: ErrorCode;

  constructor(code: ErrorCode, message = '') {
    super(message);
    this.name = 'CustomFunctions.Error';
    this.code = code;
  }
}
