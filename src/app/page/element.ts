/** An element of index.html by its id. */
export function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`index.html has no #${id}`);
  return found;
}
