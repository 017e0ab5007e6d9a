/** `functions.json`, as far as a host reads it. */
export interface FunctionCatalogue {
  readonly allowErrorForDataTypeAny?: boolean;
  readonly functions: readonly FunctionEntry[];
}

export interface FunctionEntry {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterEntry[];
  readonly options?: { readonly requiresAddress?: boolean };
}

export interface ParameterEntry {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: 'scalar' | 'matrix';
  readonly optional?: boolean;
  readonly repeating?: boolean;
}

/** The namespace the manifest puts before every id. */
export const namespace = 'QT';

/** The name people type. */
export function cellName(entry: FunctionEntry): string {
  return `${namespace}.${entry.id}`;
}
