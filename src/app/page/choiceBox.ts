import { element } from './element.js';

interface Choice {
  /** Of the select box; its label is `<id>-line`. */
  readonly id: string;
  readonly values: readonly string[];
  readonly texts?: readonly string[];
  readonly before: string | undefined;
  readonly isShown: boolean;
  readonly chosen: (value: string) => void;
}

/** Fills a select box of the panel. @returns the value that is chosen: the one before where it is still among them. */
export function choiceBox({ id, values, texts = values, before, isShown, chosen }: Choice): string | undefined {
  const box = element(id) as HTMLSelectElement;
  element(`${id}-line`).hidden = !isShown;
  const value = values.find((one) => one === before) ?? values[0];
  const shown = [...box.options].map((option) => option.value);
  if (shown.join('\n') !== values.join('\n'))
    box.replaceChildren(...values.map((one, i) => new Option(texts[i] ?? one, one)));
  box.value = value ?? '';
  box.onchange = () => chosen(box.value);
  return value;
}
