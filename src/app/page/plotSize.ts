import { element } from './element.js';

const height = 360;
const [narrowest, widest] = [300, 760];

/** The room that the panel gives its plot. [px] */
export function plotSize(): { readonly width: number; readonly height: number } {
  return { width: Math.min(widest, Math.max(narrowest, element('panel-figure').clientWidth)), height };
}
