import { namespace } from '../../app/calls/functionCatalogue.js';
import { typedName } from './typedName.js';

/** Whether the name of a function, typed or stored, is in our namespace. */
export function isOurs(written: string): boolean {
  return typedName(written).startsWith(`${namespace}.`);
}
