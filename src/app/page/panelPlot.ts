import type { PlotData } from '../plot/plotParts.js';
import { type DrawnPlot, drawPlot } from '../plot/drawPlot.js';
import { element } from './element.js';
import { readingText } from './readingText.js';

interface PlotKeys {
  /** A row of the sheet as people count it. */
  readonly chosen: (row: number) => void;
  readonly left: () => void;
}

/** A reading further from the pointer than this does not count. [px of the plot] */
const reach = 28;
const pageful = 10;
const usualHint =
  'Point at a reading, or move from one to the next with the arrow keys. F6 moves between the grid, the plot and the buttons.';

/** The plot in the panel: redrawn with new data, walked through with the keyboard, pointed at with the mouse. */
export class PanelPlot {
  private data: PlotData | undefined;
  private places: readonly Place[] = [];
  private current = -1;
  private svg: SVGSVGElement | undefined;
  private readonly area = element('panel-plot');

  constructor(private readonly keys: PlotKeys) {
    this.area.addEventListener('keydown', (event) => this.pressed(event));
    this.area.addEventListener('pointermove', (event) => this.pointed(event));
    this.area.addEventListener('pointerleave', () => this.mark(this.current));
    this.area.addEventListener('click', (event) => this.clicked(event));
  }

  draw(data: PlotData, width: number, height: number): void {
    const when = this.data?.readings[this.current]?.when;
    this.data = data;
    this.current = when === undefined ? -1 : data.readings.findIndex((reading) => reading.when === when);
    const svg = drawPlot(data, { document, width, height, id: 'panel-plot-drawn' });
    // Its words are below as text, and the readings are read out one by one.
    svg.setAttribute('aria-hidden', 'true');
    this.area.replaceChildren(svg);
    this.svg = svg;
    this.places = readingPlaces(svg, data);
    this.mark(this.current);
  }

  private pressed(event: KeyboardEvent): void {
    const last = this.places.length - 1;
    if (event.ctrlKey || event.metaKey || event.altKey || last < 0) return;
    const from = this.current < 0 ? last + 1 : this.current;
    const goals: Readonly<Record<string, number>> = {
      ArrowLeft: from - 1,
      ArrowRight: this.current < 0 ? 0 : from + 1,
      PageUp: from - pageful,
      PageDown: this.current < 0 ? 0 : from + pageful,
      Home: 0,
      End: last,
    };
    const goal = goals[event.key];
    if (goal !== undefined) this.mark((this.current = Math.min(last, Math.max(0, goal))));
    else if (event.key === 'Enter') this.choose(this.current);
    else if (event.key === 'Escape') this.keys.left();
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  private pointed(event: PointerEvent): void {
    const near = this.nearest(event);
    this.mark(near < 0 ? this.current : near);
  }

  private clicked(event: MouseEvent): void {
    const near = this.nearest(event);
    if (near < 0) return;
    this.mark((this.current = near));
    this.choose(near);
  }

  private choose(index: number): void {
    const row = this.data?.readings[index]?.row;
    if (row !== undefined) this.keys.chosen(row);
  }

  private nearest({ clientX, clientY }: MouseEvent): number {
    const box = this.svg?.getBoundingClientRect();
    if (this.svg === undefined || box === undefined || box.width === 0) return -1;
    const scale = this.svg.viewBox.baseVal.width / box.width;
    const [x, y] = [(clientX - box.left) * scale, (clientY - box.top) * scale];
    let [nearest, least] = [-1, reach];
    this.places.forEach((place, index) => {
      // Distance along the time axis counts most: readings follow one another.
      const distance = Math.hypot(place.x - x, (place.y - y) / 4);
      if (distance < least) [nearest, least] = [index, distance];
    });
    return nearest;
  }

  private mark(index: number): void {
    this.svg?.querySelector('.here')?.remove();
    const [reading, place] = [this.data?.readings[index], this.places[index]];
    const line = element('panel-reading');
    const text = reading === undefined || this.data === undefined ? usualHint : readingText(reading, this.data);
    if (line.textContent !== text) line.textContent = text;
    if (place === undefined) return;
    const ring = document.createElementNS('http://www.w3.org/2000/svg', 'circle');
    for (const [name, value] of Object.entries({ class: 'here', cx: place.x, cy: place.y, r: 7 }))
      ring.setAttribute(name, String(value));
    this.svg?.append(ring);
  }
}

/** Where a reading stands in the plot. [px of the plot] */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** The places of the readings, in their order. */
function readingPlaces(plot: DrawnPlot, { readings }: PlotData): Place[] {
  const [x, y] = [plot.scale('x'), plot.scale('y')];
  return readings.map(({ when, level }) => ({ x: x.apply(when), y: y.apply(level) }));
}
