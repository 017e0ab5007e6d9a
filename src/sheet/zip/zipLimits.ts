/** What an archive may claim before anything in it is inflated. Far above any log, far below what hurts. */
export const zipLimits = {
  entries: 10_000,
  /** Bytes of all parts together, inflated. */
  totalSize: 512 * 1024 * 1024,
  /** Rows of a log compress twenty to a hundred times. */
  ratio: 250,
  /** Bytes below which a part may be as dense as it likes: a blank picture is. */
  smallPart: 8 * 1024 * 1024,
} as const;
