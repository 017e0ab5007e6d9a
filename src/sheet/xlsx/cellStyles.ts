import type { BorderLine, BorderSide, CellLook, LineKind } from '../book/cellLook.js';
import { walkXml, type XmlAttributes } from '../xml/walkXml.js';
import { formatNumbered } from './builtInFormats.js';
import { type Colours, colourOf } from './colourOf.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';
import { type Border, type Fill, type Font, StyleParts, type Xf } from './styleParts.js';

type Across = NonNullable<CellLook['across']>;

const lines: ReadonlyMap<string, LineKind> = new Map([
  ['hair', 'hair'],
  ['thin', 'thin'],
  ['medium', 'medium'],
  ['thick', 'thick'],
  ['dotted', 'dotted'],
  ['dashed', 'dashed'],
  ['mediumDashed', 'dashed'],
  ['dashDot', 'dash-dot'],
  ['mediumDashDot', 'dash-dot'],
  ['dashDotDot', 'dash-dot'],
  ['mediumDashDotDot', 'dash-dot'],
  ['slantDashDot', 'dash-dot'],
  ['double', 'double'],
]);
const sides: ReadonlyMap<string, BorderSide> = new Map([
  ['left', 'left'],
  ['start', 'left'],
  ['right', 'right'],
  ['end', 'right'],
  ['top', 'top'],
  ['bottom', 'bottom'],
]);
const across: ReadonlyMap<string, Across> = new Map([
  ['left', 'left'],
  ['center', 'center'],
  ['centerContinuous', 'center'],
  ['right', 'right'],
  ['justify', 'justify'],
  ['distributed', 'justify'],
]);

interface CellStyles {
  /** The number format by the number of the cell style; undefined for General. */
  readonly formats: readonly (string | undefined)[];
  readonly colours: Colours;
  /** By the number of the cell style, where asked for; styles that look alike have one object. */
  readonly looks: readonly CellLook[];
}

interface StyleTerms {
  readonly theme: Colours['theme'];
  readonly withLooks: boolean;
}

/** The number formats and looks of all cell styles. */
export function cellStyles(bytes: Uint8Array, part: string, { theme, withLooks }: StyleTerms): CellStyles {
  const parts = new StyleParts();
  walkXml(bytes, part, {
    prefixes: spreadsheetPrefixes,
    open: (element, attributes) => parts.open(element, attributes),
    close: (element) => parts.close(element),
  });
  const formats = parts.cells.map(({ format }) => formatNumbered(format, parts.formats));
  const colours = { theme, indexed: parts.indexed };
  return { formats, colours, looks: withLooks ? looksOf(parts, colours) : [] };
}

function looksOf(parts: StyleParts, colours: Colours): CellLook[] {
  const known = new Map<string, CellLook>();
  return parts.cells.map((xf) => {
    const look = lookOf(xf, parts, colours);
    const key = JSON.stringify(look);
    const same = known.get(key);
    if (same === undefined) known.set(key, look);
    return same ?? look;
  });
}

function lookOf(xf: Xf, parts: StyleParts, colours: Colours): CellLook {
  const fill = fillOf(parts.fills[xf.fill], colours);
  const borders = bordersOf(parts.borders[xf.border], colours);
  return {
    ...letters(parts.fonts[xf.font], colours),
    ...(fill === undefined ? {} : { fill }),
    ...(borders === undefined ? {} : { borders }),
    ...alignment(xf.alignment),
  };
}

function letters(font: Font | undefined, colours: Colours): CellLook {
  if (font === undefined) return {};
  const colour = colourOf(font.colour, colours);
  return {
    ...(font.bold ? { bold: true } : {}),
    ...(font.italic ? { italic: true } : {}),
    ...(font.underline ? { underline: true } : {}),
    ...(font.struck ? { struck: true } : {}),
    ...(font.size >= 1 && font.size <= 409 ? { size: font.size } : {}),
    // The name may end up in a style sheet of a web page.
    ...(/^[\p{L}\p{N} _-]{1,64}$/u.test(font.name) ? { font: font.name } : {}),
    ...(colour === undefined ? {} : { colour }),
  };
}

/** A pattern gives its background, a gradient its first colour. */
function fillOf(fill: Fill | undefined, colours: Colours): string | undefined {
  if (fill === undefined || fill.pattern === 'none') return undefined;
  if (fill.pattern === 'solid') return colourOf(fill.front, colours);
  return colourOf(fill.back, colours);
}

function bordersOf(border: Border | undefined, colours: Colours): CellLook['borders'] {
  const found: Partial<Record<BorderSide, BorderLine>> = {};
  for (const { side, style, colour } of border ?? []) {
    const [at, line, shown] = [sides.get(side), lines.get(style), colourOf(colour, colours)];
    if (at !== undefined && line !== undefined) found[at] = { line, ...(shown === undefined ? {} : { colour: shown }) };
  }
  return Object.keys(found).length === 0 ? undefined : found;
}

function alignment(given: XmlAttributes | undefined): CellLook {
  const side = across.get(given?.['horizontal'] ?? '');
  const upright = given?.['vertical'];
  const indent = Number(given?.['indent'] ?? 0);
  const wrap = given?.['wrapText'];
  return {
    ...(side === undefined ? {} : { across: side }),
    ...(upright === 'top' || upright === 'center' ? { upright } : {}),
    ...(wrap === '1' || wrap === 'true' ? { wrap: true } : {}),
    ...(indent > 0 && indent <= 250 ? { indent } : {}),
  };
}
