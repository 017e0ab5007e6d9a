import { fontFamily } from './lookStyle.js';
import { palette } from './palette.js';
import { xmlText } from './xmlText.js';

/** The title of a chart or of one of its axes. */
export function chartText(
  words: string,
  { size, bold = false, upward = false }: { readonly size: number; readonly bold?: boolean; readonly upward?: boolean },
): string {
  const turned = upward ? '<a:bodyPr rot="-5400000" vert="horz"/>' : '<a:bodyPr/>';
  const look =
    `sz="${size * 100}" b="${bold ? 1 : 0}"><a:solidFill><a:srgbClr val="${bold ? palette.deep : palette.ink}"/>` +
    `</a:solidFill><a:latin typeface="${fontFamily}"/>`;
  return (
    `<c:title><c:tx><c:rich>${turned}<a:p><a:pPr><a:defRPr ${look}</a:defRPr></a:pPr><a:r><a:rPr lang="en-US" ${look}` +
    `</a:rPr><a:t>${xmlText(words)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`
  );
}
