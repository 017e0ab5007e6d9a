const names: Readonly<Record<string, string>> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'upright bars' };

/** What parts the fields, in words. */
export function delimiterName(delimiter: string): string {
  return names[delimiter] ?? `"${delimiter}"`;
}
