/**
 * Colours of the plot. Blue and vermilion are two of the eight that Okabe and Ito (2008) chose to be told apart in every
 * common colour blindness (from memory), the vermilion a little darker. Each mark keeps 3:1 to the paper and to the
 * band's zone, each text 4.5:1; shape, fill and stroke say the same as colour does.
 */
export const plotColours = {
  paper: '#ffffff',
  ink: '#1c2b33',
  quiet: '#4a5b64',
  grid: '#e4eaec',
  axis: '#7d8d95',
  deep: '#1f4e5f',
  /** The therapeutic band and its limits. */
  zone: '#e6f1ec',
  limit: '#2b6b58',
  /** The level by mass balance and its 95 % band. */
  course: '#44576a',
  spread: '#8fa1b3',
  inBand: '#0072b2',
  below: '#c14f00',
  above: '#1c2b33',
  running: '#cfdde2',
} as const;

/** A shape as the plotting library draws it. */
export interface PlotSymbol {
  draw(path: CanvasPath): void;
}

/** Shapes of the marks, in pixels about the middle of the mark; their size is fixed, so that all look alike in weight. */
export const plotSymbols = {
  circle: drawing((path) => path.arc(0, 0, 3.4, 0, 2 * Math.PI)),
  smallCircle: drawing((path) => path.arc(0, 0, 1.7, 0, 2 * Math.PI)),
  triangleDown: polygon([-4.4, -3.2], [4.4, -3.2], [0, 4.6]),
  diamond: polygon([0, -5], [4.4, 0], [0, 5], [-4.4, 0]),
  /** A stem with a head, upward. */
  doseTick: drawing((path) => {
    path.moveTo(0, 6);
    path.lineTo(0, -6);
    path.moveTo(-2.6, -2.6);
    path.lineTo(0, -6);
    path.lineTo(2.6, -2.6);
  }),
  drop: drawing((path) => {
    path.moveTo(0, -6.2);
    path.bezierCurveTo(1.4, -2.8, 4.2, -0.6, 4.2, 2);
    path.bezierCurveTo(4.2, 4.6, 2.2, 6, 0, 6);
    path.bezierCurveTo(-2.2, 6, -4.2, 4.6, -4.2, 2);
    path.bezierCurveTo(-4.2, -0.6, -1.4, -2.8, 0, -6.2);
    path.closePath();
  }),
  pointRight: polygon([-3, -4], [4, 0], [-3, 4]),
  pointLeft: polygon([3, -4], [-4, 0], [3, 4]),
  cross: drawing((path) => {
    path.moveTo(-3.4, -3.4);
    path.lineTo(3.4, 3.4);
    path.moveTo(-3.4, 3.4);
    path.lineTo(3.4, -3.4);
  }),
} as const;

function drawing(draw: (path: CanvasPath) => void): PlotSymbol {
  return { draw };
}

function polygon(...corners: readonly (readonly [x: number, y: number])[]): PlotSymbol {
  return drawing((path) => {
    corners.forEach(([x, y], index) => {
      if (index === 0) path.moveTo(x, y);
      else path.lineTo(x, y);
    });
    path.closePath();
  });
}
