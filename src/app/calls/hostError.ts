/** The codes a function may throw, as the hosts spell them. */
export const errorCode = {
  divisionByZero: '#DIV/0!',
  invalidName: '#NAME?',
  invalidNumber: '#NUM!',
  invalidReference: '#REF!',
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  nullReference: '#NULL!',
} as const;

type ErrorCode = (typeof errorCode)[keyof typeof errorCode];

/** `CustomFunctions.Error`: the only thing thrown whose sentence a host keeps. */
export class HostError extends Error {
  readonly code: ErrorCode;

  constructor(code: ErrorCode, message = '') {
    super(message);
    this.name = 'CustomFunctions.Error';
    this.code = code;
  }
}
