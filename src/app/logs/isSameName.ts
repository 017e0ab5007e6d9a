/** Names of sheets, ranges and tables are compared without case. */
export function isSameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
