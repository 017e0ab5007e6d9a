/** Contrast of two colours as WCAG 2 defines it, of `#rrggbb`. */
export function contrast(one: string, other: string): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

function luminance(colour: string): number {
  const parts = /^#(..)(..)(..)$/.exec(colour);
  if (parts === null) throw new Error(`not a colour: ${colour}`);
  const [red = 0, green = 0, blue = 0] = parts.slice(1).map((hex) => {
    const share = parseInt(hex, 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
