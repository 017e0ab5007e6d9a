const begin = '<!-- functions: written by npm run docs -->';
const end = '<!-- end of functions -->';

/** A text with what stands between its two markers replaced. */
export function withGeneratedPart(text: string, part: string): string {
  const [before, ...rest] = text.split(begin);
  const after = rest[0]?.split(end);
  if (before === undefined || rest.length !== 1 || after?.length !== 2) {
    throw new Error(`the text needs ${begin} and then ${end}, once each`);
  }
  return `${before}${begin}\n\n${part}\n\n${end}${after[1]}`;
}
