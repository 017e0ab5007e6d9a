const perInch: ReadonlyMap<string, number> = new Map([
  ['in', 1],
  ['cm', 2.54],
  ['mm', 25.4],
  ['pt', 72],
  ['pc', 6],
  ['px', 96],
]);

/** A length such as `2.26cm` in pixels of the screen. */
export function pixels(length: string | undefined): number | undefined {
  const parts = /^(\d+(?:\.\d+)?)([a-z]{2})$/.exec(length ?? '');
  const unit = perInch.get(parts?.[2] ?? '');
  return unit === undefined ? undefined : Math.round((Number(parts?.[1]) / unit) * 96);
}
