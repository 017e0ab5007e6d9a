import { copperForms, type Card, type Finding, type ReferenceKey } from '../../engine/index.js';

/** The sources that a report cites, in the order in which they come up: the band's, then those of the findings. */
export function sourcesOf(findings: readonly Finding[], { form }: Card): readonly ReferenceKey[] {
  const band = form === null ? [] : [copperForms[form].source];
  return [...new Set<ReferenceKey>([...band, ...findings.map(({ source }) => source)])];
}
