/** Run in the page: texts of the plot that is shown which lie on one another or hang out of it, and how many there are. */
export function textsInTheWay(): { inTheWay: string[]; texts: number } {
  const shown = Array.from(document.querySelectorAll('figure > div')).find((part) => part.getClientRects().length > 0);
  const svg = shown?.querySelector('svg');
  if (svg === null || svg === undefined) throw new Error('no plot is shown');
  const frame = svg.getBoundingClientRect();
  const boxes = Array.from(svg.querySelectorAll('text'), (text) => ({
    text: text.textContent ?? '',
    box: text.getBoundingClientRect(),
  }));
  const out = boxes.filter(
    ({ box }) =>
      box.left < frame.left - 1 ||
      box.right > frame.right + 1 ||
      box.top < frame.top - 1 ||
      box.bottom > frame.bottom + 1,
  );
  const inTheWay = out.map(({ text }) => `outside: ${text}`);
  // Boxes of text are higher than its letters.
  const slack = 3;
  boxes.forEach((one, at) => {
    for (const other of boxes.slice(at + 1)) {
      const [a, b] = [one.box, other.box];
      const meet =
        a.left < b.right && b.left < a.right && a.top + slack < b.bottom - slack && b.top + slack < a.bottom - slack;
      if (meet) inTheWay.push(`${one.text} / ${other.text}`);
    }
  });
  return { inTheWay, texts: boxes.length };
}
