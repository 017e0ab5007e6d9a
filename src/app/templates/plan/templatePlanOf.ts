import type { TemplatePlan } from './templatePlan.js';
import { withPlaces } from './withPlaces.js';

/** The plan with every place that its texts and formulas name written as an address. */
export function templatePlanOf(plan: TemplatePlan): TemplatePlan {
  const places = new Map(plan.sheets.map((sheet) => [sheet.name, sheet.places]));
  const writer =
    (own: string) =>
    (text: string): string =>
      withPlaces(text, (key, sheet = own) => {
        const place = places.get(sheet)?.[key];
        if (place === undefined) throw new Error(`${own}: there is no place {${sheet}!${key}}`);
        return place;
      });
  return {
    ...plan,
    sheets: plan.sheets.map((sheet) => withTexts(sheet, writer(sheet.name))),
    names: withTexts(plan.names, writer('')),
  };
}

/** The same data with each text in it, however deep, as it is written. */
function withTexts<T>(data: T, written: (text: string) => string): T {
  const each = (value: unknown): unknown => {
    if (typeof value === 'string') return written(value);
    if (Array.isArray(value)) return value.map(each);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, each(inner)]));
  };
  return each(data) as T;
}
