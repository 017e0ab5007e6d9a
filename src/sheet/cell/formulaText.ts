declare const form: unique symbol;

// A text in one form does not pass for another; a plain text, such as one just read from a file, passes for any.

/** A formula as files hold it, without its `=`: `_xldudf_NS_NAME(Log[[#This Row],[Level]])`. */
export type StoredFormula = string & { readonly [form]?: 'stored' };

/** A formula as people see it, without its `=`: `NS.NAME(Log[@Level])`. */
export type TypedFormula = string & { readonly [form]?: 'typed' };

/** A formula as people enter it into a cell: with its `=`. */
export type EnteredFormula = string & { readonly [form]?: 'entered' };

export function entered(typed: TypedFormula): EnteredFormula {
  return `=${typed}`;
}

/** What follows the `=`; the `=` may be missing. */
export function withoutEquals(formula: EnteredFormula | TypedFormula): TypedFormula {
  return formula.replace(/^\s*=/, '');
}
