import type { Status } from './statusOf.js';

interface ShownCell {
  readonly address: string;
  /** What the cell shows, as text. */
  readonly value: string;
}

/** Writes the line below the grid. A text that has not changed is left alone, so that it is not read out twice. */
export function showStatus({ address, value }: ShownCell, { kind, text }: Status): void {
  const bar = document.getElementById('status');
  if (bar !== null) bar.dataset['kind'] = kind;
  write('status-cell', address);
  write('status-value', value);
  write('status-text', text);
}

function write(id: string, text: string): void {
  const element = document.getElementById(id);
  if (element !== null && element.textContent !== text) element.textContent = text;
}
