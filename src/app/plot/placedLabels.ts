export interface Label {
  /** Places it may stand at, the best first: its left edge. [px] */
  readonly lefts: readonly number[];
  readonly width: number;
}

interface Place {
  readonly left: number;
  /** 0 is the best lane. */
  readonly lane: number;
}

interface Room {
  readonly left: number;
  readonly right: number;
  readonly lanes: number;
  /** Stretches of a lane that are taken already. */
  readonly taken?: readonly { readonly lane: number; readonly left: number; readonly right: number }[];
}

/** Least space between two labels of a lane. [px] */
const apart = 6;

/** Where each label stands so that none lies on another or outside; null where there is no room for it. */
export function placedLabels(labels: readonly Label[], { left, right, lanes, taken = [] }: Room): (Place | null)[] {
  const spans = [...taken];
  const isFree = (lane: number, from: number, to: number): boolean =>
    from >= left &&
    to <= right &&
    spans.every((span) => span.lane !== lane || to + apart <= span.left || from >= span.right + apart);
  return labels.map(({ lefts, width }) => {
    for (let lane = 0; lane < lanes; lane++) {
      const free = lefts.find((from) => isFree(lane, from, from + width));
      if (free === undefined) continue;
      spans.push({ lane, left: free, right: free + width });
      return { left: free, lane };
    }
    return null;
  });
}
