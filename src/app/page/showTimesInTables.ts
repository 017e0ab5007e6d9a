import { FormulaDataModel, INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { InterceptorEffectEnum, type ICellData, type IStyleData, type Nullable, type Univer } from '@univerjs/core';

/** After the spilled value is put in place, before it is written out by its number format. */
const priority = 50;

/**
 * Shows times of a spilled table as times. The sheet component takes the format of an answer into its own cell only, and
 * drops it in the cells a table spills into. A format of the person's own stays.
 */
export function showTimesInTables(univer: Univer): void {
  const injector = univer.__getInjector();
  const formulas = injector.get(FormulaDataModel);
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority,
    effect: InterceptorEffectEnum.Style,
    handler: (cell, location, next) => {
      const spilled =
        formulas.getArrayFormulaCellData()[location.unitId]?.[location.subUnitId]?.[location.row]?.[location.col];
      const format = formatOf(spilled);
      if (format === undefined || !cell) return next(cell);
      const style: IStyleData = location.workbook.getStyles().get(cell.s) ?? {};
      return next(style.n ? cell : { ...cell, s: { ...style, n: format } });
    },
  });
}

function formatOf(cell: Nullable<ICellData>): { pattern: string } | undefined {
  return cell && typeof cell.s === 'object' ? (cell.s?.n ?? undefined) : undefined;
}
