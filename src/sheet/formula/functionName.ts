import { formulaTokens } from './formulaTokens.js';
import type { OutsideNames } from './outsideFunctions.js';

/** The name of a function as people type it, in capitals: `_xlfn._xlws.FILTER` is FILTER, `_xldudf_NS_NAME` is NS.NAME. */
export function typedName(written: string): string {
  const bare = written.replace(/^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i, '').toUpperCase();
  return bare.replace(/^_XLDUDF_([^_]+)_/, '$1.');
}

/** The name of a function as files hold it: with a prefix where it is newer than the file format. */
export function storedName(written: string, outside: OutsideNames): string {
  const name = typedName(written);
  if (outside.has(name)) return `_xldudf_${name.replace('.', '_')}`;
  if (!newerFunctions.has(name)) return written;
  return `_xlfn.${name === 'FILTER' || name === 'SORT' ? '_xlws.' : ''}${name}`;
}

/** The functions that a formula calls, by their names as typed; a text that looks like a call is none. */
export function calledFunctions(formula: string): string[] {
  return formulaTokens(formula)
    .filter(({ kind }) => kind === 'function')
    .map(({ text }) => typedName(text));
}

/** Whether a formula, typed or stored, calls a function from outside. */
export function callsOutside(formula: string, outside: OutsideNames): boolean {
  // Most formulas of most books: the letters alone rule a call out.
  if (!/_xldudf_|[\p{L}\p{N}_]\.[\p{L}_]/iu.test(formula)) return false;
  return calledFunctions(formula).some((name) => outside.has(name));
}

/**
 * Functions newer than the file format: a file holds them with a prefix. These are the future functions listed in the
 * format's published extensions, and the dynamic-array functions of later years.
 */
const newerFunctions: ReadonlySet<string> = new Set(
  `ACOT ACOTH AGGREGATE ARABIC BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND BITLSHIFT BITOR
  BITRSHIFT BITXOR CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHISQ.TEST COMBINA CONCAT
  CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL ERF.PRECISE ERFC.PRECISE
  EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FILTERXML FLOOR.MATH FLOOR.PRECISE FORECAST.ETS
  FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV
  GAMMALN.PRECISE GAUSS HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC IMSECH IMSINH IMTAN ISFORMULA ISOWEEKNUM
  LOGNORM.DIST LOGNORM.INV MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST
  NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI
  POISSON.DIST QUARTILE.EXC QUARTILE.INC QUERYSTRING RANK.AVG RANK.EQ RRI SEC SECH SHEET SHEETS SKEW.P STDEV.P STDEV.S
  SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TEXTJOIN UNICHAR UNICODE VAR.P VAR.S WEBSERVICE WEIBULL.DIST
  XOR Z.TEST
  ARRAYTOTEXT BYCOL BYROW CHOOSECOLS CHOOSEROWS DROP EXPAND FILTER HSTACK IMAGE ISOMITTED LAMBDA LET MAKEARRAY MAP
  RANDARRAY REDUCE SCAN SEQUENCE SORT SORTBY TAKE TEXTAFTER TEXTBEFORE TEXTSPLIT TOCOL TOROW UNIQUE VALUETOTEXT VSTACK
  WRAPCOLS WRAPROWS XLOOKUP XMATCH`.split(/\s+/),
);
