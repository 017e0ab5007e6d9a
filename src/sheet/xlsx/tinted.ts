/**
 * A colour made darker (below 0) or lighter (above 0) as the workbook format defines it: the luminance changes, the hue stays.
 *
 * @param colour such as `#1f4e5f`
 * @param tint -1 is black, 1 white
 */
export function tinted(colour: string, tint: number): string {
  if (!(tint >= -1 && tint <= 1) || tint === 0) return colour;
  const [hue, luminance, saturation] = hueOf(channels(colour));
  const wanted = tint < 0 ? luminance * (1 + tint) : luminance * (1 - tint) + tint;
  return hex(colourOfHue(hue, wanted, saturation));
}

type Three = readonly [number, number, number];

/** Red, green and blue, each from 0 to 1. */
function channels(colour: string): Three {
  const number = parseInt(colour.slice(1), 16);
  return [(number >> 16) / 255, ((number >> 8) & 255) / 255, (number & 255) / 255];
}

function hex(parts: Three): string {
  const part = (value: number): string =>
    Math.round(Math.min(1, Math.max(0, value)) * 255)
      .toString(16)
      .padStart(2, '0');
  return `#${parts.map(part).join('')}`;
}

/** Hue in sixths of the circle, luminance and saturation. */
function hueOf([red, green, blue]: Three): Three {
  const [most, least] = [Math.max(red, green, blue), Math.min(red, green, blue)];
  const [luminance, spread] = [(most + least) / 2, most - least];
  if (spread === 0) return [0, luminance, 0];
  const saturation = spread / (1 - Math.abs(2 * luminance - 1));
  if (most === red) return [((green - blue) / spread + 6) % 6, luminance, saturation];
  return [most === green ? (blue - red) / spread + 2 : (red - green) / spread + 4, luminance, saturation];
}

function colourOfHue(hue: number, luminance: number, saturation: number): Three {
  const spread = (1 - Math.abs(2 * luminance - 1)) * saturation;
  const least = luminance - spread / 2;
  const channel = (from: number): number => {
    const distance = Math.abs(((hue + from) % 6) - 3);
    return least + spread * Math.min(1, Math.max(0, distance - 1));
  };
  return [channel(0), channel(4), channel(2)];
}
