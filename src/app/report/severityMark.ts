import type { Severity } from '../../engine/index.js';
import { Markup, markup } from './markup.js';

/** Each severity has a shape of its own, so that it is told apart without colour. */
const shapes: Readonly<Record<Exclude<Severity, 'verdict'>, string>> = {
  danger: '<path d="M4 0h4l4 4v4l-4 4h-4l-4-4v-4z"/>',
  warning: '<path d="M6 .5l6 11h-12z"/>',
  note: '<circle cx="6" cy="6" r="4.4" fill="none" stroke="currentColor" stroke-width="1.8"/>',
};

/** A severity as a shape and its word. */
export function severityMark(severity: Exclude<Severity, 'verdict'>, word: string = severity): Markup {
  const shape = new Markup(
    `<svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">${shapes[severity]}</svg>`,
  );
  return markup`<span class="severity ${severity}">${shape} ${word}</span>`;
}
