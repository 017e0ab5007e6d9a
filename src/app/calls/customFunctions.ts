import { errorCode, type ErrorCode } from '../../sheet/index.js';

/** `CustomFunctions.Error`: the only thing thrown whose sentence a host keeps. */
export class HostError extends Error {
  readonly code: ErrorCode;

  constructor(code: ErrorCode, message = '') {
    super(message);
    this.name = 'CustomFunctions.Error';
    this.code = code;
  }
}

/** A function as the bundle registers it: host arguments in, a value or rows out. */
export type Implementation = (...values: unknown[]) => unknown;

/** The global the bundle finds: `CustomFunctions.associate(id, fn)`, `CustomFunctions.Error`, `CustomFunctions.ErrorCode`. */
export interface CustomFunctionsGlobal {
  associate(idOrMap: string | Record<string, Implementation>, implementation?: Implementation): void;
  readonly Error: typeof HostError;
  readonly ErrorCode: typeof errorCode;
}

/** A fresh global, and the map it fills while the bundle runs. */
export function customFunctions(): {
  readonly global: CustomFunctionsGlobal;
  readonly associated: Map<string, Implementation>;
} {
  const associated = new Map<string, Implementation>();
  const global: CustomFunctionsGlobal = {
    associate(idOrMap, implementation) {
      const entries = typeof idOrMap === 'string' ? [[idOrMap, implementation] as const] : Object.entries(idOrMap);
      for (const [id, fn] of entries) {
        if (typeof fn !== 'function') throw new TypeError(`associate("${id}") was given no function`);
        associated.set(id.toUpperCase(), fn);
      }
    },
    Error: HostError,
    ErrorCode: errorCode,
  };
  return { global, associated };
}
