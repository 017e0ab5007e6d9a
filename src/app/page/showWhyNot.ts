import { element } from './element.js';
import { showText } from './showText.js';

/** The panel without a plot, and what to do. */
export function showWhyNot(why: string): void {
  showText('panel-why', why);
  showText('panel-verdict', '');
  showText('panel-words', '');
  element('panel-figure').hidden = true;
  element('panel-findings').hidden = true;
}
