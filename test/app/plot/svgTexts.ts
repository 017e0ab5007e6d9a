import { textWidth } from '../../../src/app/plot/textWidth.js';

export interface PlacedText {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly fill: string;
}

/** Every line of text in a drawing with about the room it takes. */
export function svgTexts(svg: Element): PlacedText[] {
  return Array.from(svg.querySelectorAll('text')).flatMap((element) => {
    const [x = NaN, y = NaN] = (/translate\(([^)]*)\)/.exec(element.getAttribute('transform') ?? '')?.[1] ?? '')
      .split(',')
      .map(Number);
    const size = Number(inherited(element, 'font-size'));
    const anchor = inherited(element, 'text-anchor');
    const spans = Array.from(element.querySelectorAll('tspan'));
    const lines = spans.length === 0 ? [element] : spans;
    return lines.map((line, index) => {
      const text = line.textContent ?? '';
      const width = textWidth(text, size);
      const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
      const middle = y + (index - (lines.length - 1) / 2) * size * 1.15;
      const fill = inherited(element, 'fill');
      return { text, left, right: left + width, top: middle - size / 2, bottom: middle + size / 2, fill };
    });
  });
}

/** The nearest value of an attribute, on the element or above it. */
export function inherited(element: Element, name: string): string {
  for (let at: Element | null = element; at !== null; at = at.parentElement) {
    const value = at.getAttribute(name);
    if (value !== null) return value;
  }
  return '';
}
