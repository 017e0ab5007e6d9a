import { element } from './element.js';
import { focusGrid } from './gridSelection.js';
import type { OpenedSheet } from './openSheet.js';

/** F6 goes from the buttons to the grid, to the plot, and round; the grid keeps the Tab key for itself. */
export function walkParts(sheet: OpenedSheet): void {
  const parts: readonly { readonly at: string; readonly enter: () => void; readonly isThere: () => boolean }[] = [
    { at: 'masthead', enter: () => element('open-input').focus(), isThere: () => true },
    { at: 'sheet', enter: () => focusGrid(sheet), isThere: () => true },
    {
      at: 'panel',
      enter: () => element(element('panel-figure').hidden ? 'panel-close' : 'panel-plot').focus(),
      isThere: () => !element('panel').hidden,
    },
  ];
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6' || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopPropagation();
      const there = parts.filter(({ isThere }) => isThere());
      // The grid's own input stands outside of its frame: what is in no other part is the grid.
      const here = there.findIndex(({ at }) => element(at).contains(document.activeElement));
      const from = here === -1 ? there.findIndex(({ at }) => at === 'sheet') : here;
      there[(from + (event.shiftKey ? there.length - 1 : 1)) % there.length]?.enter();
    },
    { capture: true },
  );
}
