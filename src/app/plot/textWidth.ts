/** Widths of characters in the widest of the usual sans serifs, in parts of the size of the type. */
const widths: readonly (readonly [characters: string, width: number])[] = [
  ["iljI|.,:;'!", 0.32],
  [' ftr()-/·[]“”', 0.4],
  ['mwMW%@', 0.96],
  ['ABCDEFGHKLNOPQRSTUVXYZ&<>~+', 0.76],
];
const usual = 0.635;

/** About how wide a text is on one line. [px] */
export function textWidth(text: string, size: number): number {
  let width = 0;
  for (const character of text) width += widths.find(([known]) => known.includes(character))?.[1] ?? usual;
  return width * size;
}

/** A text in lines no wider than there is room for. */
export function wrappedText(text: string, size: number, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size) > room) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}
