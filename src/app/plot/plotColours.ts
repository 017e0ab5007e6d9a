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
