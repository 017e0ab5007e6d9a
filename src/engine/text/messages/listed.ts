const longest = 100;

/** Words to choose from, quoted; what would make the sentence too long is left out. */
export function listed(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  const last = quoted[quoted.length - 1] ?? '';
  const whole = quoted.length < 2 ? last : `${quoted.slice(0, -1).join(', ')} or ${last}`;
  if (whole.length <= longest) return whole;
  let shown = '';
  for (const word of quoted) {
    if (shown.length + word.length + 2 > longest) break;
    shown += `${word}, `;
  }
  return `${shown}and so on`;
}
