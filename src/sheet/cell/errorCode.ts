/** The errors that every spreadsheet program knows, and every file can hold. */
export const errorCode = {
  divisionByZero: '#DIV/0!',
  invalidName: '#NAME?',
  invalidNumber: '#NUM!',
  invalidReference: '#REF!',
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  nullReference: '#NULL!',
} as const;

export type ErrorCode = (typeof errorCode)[keyof typeof errorCode];
