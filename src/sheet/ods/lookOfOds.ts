import type { BorderLine, BorderSide, CellLook, LineKind } from '../book/cellLook.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { pixels } from './pixels.js';

type Across = NonNullable<CellLook['across']>;

const sides: readonly BorderSide[] = ['top', 'right', 'bottom', 'left'];
const across: ReadonlyMap<string, Across> = new Map([
  ['start', 'left'],
  ['left', 'left'],
  ['center', 'center'],
  ['end', 'right'],
  ['right', 'right'],
  ['justify', 'justify'],
]);
const lines: ReadonlyMap<string, LineKind> = new Map([
  ['fine-dashed', 'dashed'],
  ['dashed', 'dashed'],
  ['dotted', 'dotted'],
  ['dash-dot', 'dash-dot'],
  ['dash-dot-dot', 'dash-dot'],
  ['double', 'double'],
  ['double-thin', 'double'],
]);
const uprights: ReadonlyMap<string, NonNullable<CellLook['upright']>> = new Map([
  ['top', 'top'],
  ['middle', 'center'],
]);
const pixelsOfAnIndent = 13;

/** The look of a cell style of an .ods file, from its own properties and those of its parents. */
export function lookOfOds(said: XmlAttributes): CellLook {
  const borders = bordersOf(said);
  const fill = colourOf(said['fo:background-color']);
  return {
    ...letters(said),
    ...(fill === undefined ? {} : { fill }),
    ...(borders === undefined ? {} : { borders }),
    ...alignment(said),
  };
}

function letters(said: XmlAttributes): CellLook {
  const weight = said['fo:font-weight'];
  const size = Number(/^([\d.]+)pt$/.exec(said['fo:font-size'] ?? '')?.[1] ?? NaN);
  const font = said['style:font-name'] ?? '';
  const colour = said['style:use-window-font-color'] === 'true' ? undefined : colourOf(said['fo:color']);
  return {
    ...(weight === 'bold' || Number(weight) >= 600 ? { bold: true } : {}),
    ...(said['fo:font-style'] === 'italic' ? { italic: true } : {}),
    ...(isLine(said['style:text-underline-style']) ? { underline: true } : {}),
    ...(isLine(said['style:text-line-through-style']) ? { struck: true } : {}),
    ...(size >= 1 && size <= 409 ? { size } : {}),
    ...(/^[\p{L}\p{N} _-]{1,64}$/u.test(font) ? { font } : {}),
    ...(colour === undefined ? {} : { colour }),
  };
}

function alignment(said: XmlAttributes): CellLook {
  const fixed = said['style:text-align-source'] !== 'value-type';
  const side = fixed ? across.get(said['fo:text-align'] ?? '') : undefined;
  const upright = uprights.get(said['style:vertical-align'] ?? '');
  const indent = Math.round((pixels(said['fo:margin-left']) ?? 0) / pixelsOfAnIndent);
  return {
    ...(side === undefined ? {} : { across: side }),
    ...(upright === undefined ? {} : { upright }),
    ...(said['fo:wrap-option'] === 'wrap' ? { wrap: true } : {}),
    ...(indent > 0 && indent <= 250 ? { indent } : {}),
  };
}

function bordersOf(said: XmlAttributes): CellLook['borders'] {
  const found: Partial<Record<BorderSide, BorderLine>> = {};
  for (const side of sides) {
    const border = borderOf(said[`fo:border-${side}`] ?? said['fo:border']);
    if (border !== undefined) found[side] = border;
  }
  return Object.keys(found).length === 0 ? undefined : found;
}

/** Such as `0.74pt solid #cfd8dc`. */
function borderOf(text: string | undefined): BorderLine | undefined {
  const [, points = '', kind = '', colour] = /^([\d.]+)pt ([a-z-]+)(?: (#[0-9a-f]{6}))?$/i.exec(text ?? '') ?? [];
  if (kind === '' || kind === 'none' || kind === 'hidden') return undefined;
  const width = Number(points);
  const thickness = width < 0.3 ? 'hair' : width < 1.3 ? 'thin' : width < 2.2 ? 'medium' : 'thick';
  return { line: lines.get(kind) ?? thickness, ...(colour === undefined ? {} : { colour: colour.toLowerCase() }) };
}

function colourOf(text: string | undefined): string | undefined {
  return /^#[0-9a-f]{6}$/i.test(text ?? '') ? text?.toLowerCase() : undefined;
}

function isLine(style: string | undefined): boolean {
  return style !== undefined && style !== 'none';
}
