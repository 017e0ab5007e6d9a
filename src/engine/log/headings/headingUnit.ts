import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { shown } from '../../units/shown.js';
import { dimensions, looseUnits, printedUnits, unitKey, type DimensionName } from '../../dimensions/dimensions.js';
import { headingKey } from './columnKinds.js';

/** Units that a heading may name beside those of its dimension. */
const extraUnits: Readonly<Record<string, readonly string[]>> = { change: ['%'], salinity: ['sg'] };

/** What people measure by and nobody can convert. */
const noUnits = /^(?:drops?|capfuls?|buckets?|cups?|squirts?|pumps?|grains?|scoops?|jugs?|pinch(?:es)?)$/;

/** What a heading or a name on a card is read as. */
interface ReadAs {
  readonly kind: string;
  readonly dimension?: DimensionName;
}

/**
 * The unit a heading names, as its key in the table of units; null where it names none. A unit of another dimension is
 * refused: "Dose (mg/L)" is not a dose in mL.
 */
export function headingUnit(text: string, words: ReadAs): Result<string | null, Problem> {
  if (words.dimension === undefined) return ok(null);
  const own = dimensions[words.dimension];
  const extra = extraUnits[words.kind] ?? [];
  const fits = (key: string): boolean => own.convert.has(key) || extra.includes(key);
  const { bracketed, loose, last } = unitWords(text);
  const stated = [...bracketed, ...loose].filter((key) => fits(key) || isUnit(key) || noUnits.test(key));
  const wrong = stated.find((key) => !fits(key));
  if (wrong !== undefined) {
    return refuse({ code: 'heading-unit', heading: shown(text), kind: words.kind, unit: wrong, known: own.known });
  }
  return ok(stated[0] ?? (last !== undefined && fits(last) ? last : null));
}

interface UnitWords {
  /** In brackets, where even one letter is a unit. */
  readonly bracketed: readonly string[];
  /** Anywhere, of three letters or more or with a slash or percent sign: no word of English. */
  readonly loose: readonly string[];
  /** The last word, which is a unit only if it fits. */
  readonly last: string | undefined;
}

function unitWords(text: string): UnitWords {
  const plain = headingKey(text);
  const brackets = [...plain.matchAll(/[([]([^)\]]*)[)\]]/g)].map((match) => unitKey(match[1] ?? ''));
  const rest = plain
    .replace(/[([][^)\]]*[)\]]?/g, ' ')
    .replace(/[,:?]/g, ' ')
    .replace(/%/g, ' % ')
    .trim();
  const words = rest.split(/ +/).filter((word) => word !== '');
  const pairs = words.slice(1).map((word, at) => unitKey(`${words[at] ?? ''}${word}`));
  const loose = [...pairs.filter((pair) => printedUnits.get(pair)?.includes(' ')), ...words.map(unitKey)].filter(
    (key) => key.includes('/') || key === '%' || looseUnits.has(key) || noUnits.test(key),
  );
  const last = words[words.length - 1];
  return { bracketed: brackets, loose, last: last === undefined ? undefined : unitKey(last) };
}

function isUnit(key: string): boolean {
  return Object.values(dimensions).some(({ convert }) => convert.has(key)) || key === '%';
}
