const zero = 48;
const nine = 57;
const point = 46;
const comma = 44;
const space = 32;

/**
 * The spellings that fill whole columns: digits with a point or comma, alone or followed by mg/L or ppm. NaN for
 * everything else, which parseReading reads with more patience. A million cells pass here, so no pattern matching.
 *
 * Definition: the decimal number as written; three digits after a comma are not plain.
 *
 * @param text the cell
 * @returns level [mg/L]
 * @example plainLevel('2,05 ppm') // = 2.05
 */
export function plainLevel(text: string): number {
  const length = text.length;
  let at = 0;
  let digits = 0;
  let scale = 1;
  let mark = 0;
  for (; at < length; at++) {
    const code = text.charCodeAt(at);
    if (code >= zero && code <= nine) {
      digits = digits * 10 + (code - zero);
      if (mark !== 0) scale *= 10;
    } else if ((code === point || code === comma) && mark === 0 && at > 0) mark = code;
    else break;
  }
  // Both parts are whole numbers a double holds exactly, so the quotient is the nearest double to what is written.
  if (at === 0 || at > 15 || (mark === comma && scale === 1000)) return NaN;
  return at === length || isMilligramsPerLitre(text, at) ? digits / scale : NaN;
}

/** Whether ppm or mg/L stands from here to the end; letters differ from their capitals in one bit. */
function isMilligramsPerLitre(text: string, from: number): boolean {
  let at = from;
  while (text.charCodeAt(at) === space) at++;
  const letters = text.length - at;
  const letter = (offset: number): number => text.charCodeAt(at + offset) | 32;
  if (letters === 3) return letter(0) === 112 && letter(1) === 112 && letter(2) === 109;
  return letters === 4 && letter(0) === 109 && letter(1) === 103 && text.charCodeAt(at + 2) === 47 && letter(3) === 108;
}
