import { element } from './element.js';

/** Writes into a place of the page. A text that has not changed is left alone, so that it is not read out twice. */
export function showText(id: string, text: string, kind: 'hint' | 'refusal' = 'hint'): void {
  const place = element(id);
  place.dataset['kind'] = kind;
  if (place.textContent !== text) place.textContent = text;
}
