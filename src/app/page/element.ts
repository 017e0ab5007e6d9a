/** An element of index.html by its id. */
export function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`index.html has no #${id}`);
  return found;
}

/** Writes into a place of the page. A text that has not changed is left alone, so that it is not read out twice. */
export function showText(id: string, text: string, kind: 'hint' | 'refusal' = 'hint'): void {
  const place = element(id);
  place.dataset['kind'] = kind;
  if (place.textContent !== text) place.textContent = text;
}
