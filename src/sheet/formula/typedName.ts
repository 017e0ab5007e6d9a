import { namespace } from '../../app/calls/functionCatalogue.js';

/** The name of a function as people type it, in capitals: `_xlfn._xlws.FILTER` is FILTER, `_xldudf_QT_BAND` is QT.BAND. */
export function typedName(written: string): string {
  const bare = written.replace(/^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i, '').toUpperCase();
  return bare.replace(new RegExp(`^_XLDUDF_${namespace}_`), `${namespace}.`);
}
