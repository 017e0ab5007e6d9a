/** Run in the page: texts that are shown with a contrast under 4.5:1 to what lies behind them, and how many were looked at. */
export function faintTexts(): { faint: string[]; texts: number } {
  const partsOf = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const luminance = (parts: readonly number[]): number => {
    const [red = 0, green = 0, blue = 0] = parts.slice(0, 3).map((part) => {
      const share = part / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const groundOf = (element: Element): number[] => {
    for (let at: Element | null = element; at !== null; at = at.parentElement) {
      const parts = partsOf(getComputedStyle(at).backgroundColor);
      if (parts.length === 3 || (parts[3] ?? 0) > 0) return parts;
    }
    return [255, 255, 255];
  };
  const faint: string[] = [];
  let texts = 0;
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    const text = node.textContent?.trim() ?? '';
    if (element === null || text === '' || /^(title|desc|style)$/i.test(element.tagName)) continue;
    if (element.getClientRects().length === 0) continue;
    texts++;
    const isDrawn = element.closest('svg') !== null;
    const style = getComputedStyle(element);
    const ink = luminance(partsOf(isDrawn ? style.fill : style.color));
    // White stands in the dark bars of the plot alone.
    const ground = isDrawn && ink > 0.9 ? luminance([31, 78, 95]) : luminance(groundOf(element));
    const ratio = (Math.max(ink, ground) + 0.05) / (Math.min(ink, ground) + 0.05);
    if (ratio < 4.5) faint.push(`${text}: ${ratio.toFixed(2)}`);
  }
  return { faint, texts };
}
