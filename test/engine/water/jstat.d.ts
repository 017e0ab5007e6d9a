/** The one distribution that is used of this library: the quantiles of Student's t, to check our own against. */
declare module 'jstat' {
  export const jStat: { readonly studentt: { inv(probability: number, freedom: number): number } };
}
