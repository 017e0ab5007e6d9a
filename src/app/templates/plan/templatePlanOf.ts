import type { ChartSeries, SheetPlan, TemplatePlan, Validation } from './templatePlan.js';
import { withPlaces } from './withPlaces.js';

/** The plan with every place that its texts and formulas name written as an address. */
export function templatePlanOf(plan: TemplatePlan): TemplatePlan {
  const places = new Map(plan.sheets.map(({ name, places: own }) => [name, own]));
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
    sheets: plan.sheets.map((sheet) => sheetWith(sheet, writer(sheet.name))),
    names: plan.names.map((name) => ({ ...name, cells: writer('')(name.cells) })),
  };
}

function sheetWith(sheet: SheetPlan, written: (text: string) => string): SheetPlan {
  const seriesWith = (series: ChartSeries): ChartSeries => ({
    ...series,
    name: written(series.name),
    across: written(series.across),
    up: written(series.up),
  });
  return {
    ...sheet,
    cells: sheet.cells.map((cell) =>
      typeof cell.content === 'string' ? { ...cell, content: written(cell.content) } : cell,
    ),
    validations: sheet.validations.map((one) => ({ ...one, allows: allowsWith(one.allows, written) })),
    conditions: sheet.conditions.map((one) => ({
      ...one,
      rules: one.rules.map((rule) => ({ ...rule, when: written(rule.when) })),
    })),
    charts: sheet.charts.map((chart) => ({
      ...chart,
      alt: written(chart.alt),
      series: chart.series.map(seriesWith),
    })),
  };
}

function allowsWith(allows: Validation['allows'], written: (text: string) => string): Validation['allows'] {
  switch (allows.kind) {
    case 'listFrom':
      return { ...allows, cells: written(allows.cells) };
    case 'formula':
      return { ...allows, formula: written(allows.formula) };
    case 'list':
    case 'decimal':
    case 'whole':
    case 'date':
    case 'anything':
      return allows;
  }
}
