/** `#rrggbb` of a colour written with six or, its opacity first, eight digits; undefined for anything else. */
export function colourDigits(text: string | undefined): string | undefined {
  return /^(?:[0-9a-f]{2})?[0-9a-f]{6}$/i.test(text ?? '') ? `#${text?.slice(-6).toLowerCase()}` : undefined;
}
