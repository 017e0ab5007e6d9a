const words =
  /\b(?:date|dates|time|times|when|day|hour|clock|copper|cu|level|levels|reading|readings|test|tests|tested|result|results|ppm|ppb|mg\/l|ug\/l|rise|raised|added|signs?|symptoms?|behaviou?r|obs|observations?|notes?|comments?|eating|feeding)\b/i;
const digitsOnly = /^[\s\d.,:/-]*$/;

/** Whether a text is a column's heading: words such as Date, Time, Copper, Cu ppm, Reading. */
export function isHeadingText(text: string): boolean {
  return text.length <= 60 && !digitsOnly.test(text) && words.test(text.replace(/_/g, ' '));
}
