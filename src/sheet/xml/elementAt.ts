import { walkXml, type XmlTag, type XmlWalker } from './walkXml.js';

/** An element by its places in the text: `from`–`tagTo` is the start tag, `contentTo`–`to` the end tag. */
export interface ElementAt {
  /** As written. */
  readonly name: string;
  /** Under the names as written. */
  readonly attributes: Readonly<Record<string, string | undefined>>;
  readonly from: number;
  readonly tagTo: number;
  contentTo: number;
  to: number;
}

/** An element whose start tag is met; its end comes with the end tag. */
export function elementAt({ written, attributes, from, to }: XmlTag): ElementAt {
  return { name: written, attributes, from, tagTo: to, contentTo: to, to };
}

/** Notes where an element ends. */
export function closeElement(element: ElementAt, { from, to }: XmlTag): void {
  element.contentTo = from;
  element.to = to;
}

/** The prefix of an element's name as written, such as `x:`; '' where it has none. */
export function prefixOf({ name }: ElementAt): string {
  return name.slice(0, name.indexOf(':') + 1);
}

type Visit = (name: string, element: ElementAt, around: readonly string[]) => void;

/**
 * Visits the elements of a text in order; where each ends is known once the walk is over.
 *
 * @param visit gets the name of an element, its places, and the names of the elements around it, the outermost first
 */
export function eachElement(
  { text, part, prefixes }: { readonly text: string; readonly part: string; readonly prefixes: XmlWalker['prefixes'] },
  visit: Visit,
): void {
  const open: ElementAt[] = [];
  const around: string[] = [];
  walkXml(text, part, {
    prefixes,
    open: (name, _, tag) => {
      const element = elementAt(tag);
      visit(name, element, around);
      open.push(element);
      around.push(name);
    },
    close: (_, tag) => {
      around.pop();
      const element = open.pop();
      if (element !== undefined) closeElement(element, tag);
    },
  });
}
