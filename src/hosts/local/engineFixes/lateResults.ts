import { ICommandService, type ICellData, type Injector, type Nullable } from "@univerjs/core";
import {
  FormulaDataModel,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  type ISetFormulaCalculationResultMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation, type ISetRangeValuesMutationParams } from "@univerjs/sheets";

type CellRows = Record<number, Record<number, Nullable<ICellData>>>;

interface Edit {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cells: CellRows;
}

/** A change of format alone keeps the cell's result and starts no calculation. */
const changesContent = (data: Nullable<ICellData>): boolean =>
  !data || "v" in data || "f" in data || "si" in data || "p" in data;

const contentEdit = ({ unitId, subUnitId, cellValue }: ISetRangeValuesMutationParams): Edit => {
  const cells: CellRows = {};
  for (const [row, given] of Object.entries((cellValue ?? {}) as CellRows))
    for (const [column, data] of Object.entries(given))
      if (changesContent(data)) (cells[Number(row)] ??= {})[Number(column)] = data;
  return { unitId, subUnitId, cells };
};

/**
 * The engine writes the results of a calculation over cells that were edited while it ran: a formula that was deleted meanwhile
 * left its number, or its spilled table, behind. With the fix, such a cell keeps the edit, which starts its own calculation.
 */
export const dropLateResults = (injector: Injector): void => {
  const commands = injector.get(ICommandService);
  const model = injector.get(FormulaDataModel);
  let edits: Edit[] = [];
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id === SetFormulaCalculationStartMutation.id) edits = [];
    if (id === SetArrayFormulaDataMutation.id)
      for (const { unitId, subUnitId, cells } of edits) {
        // The engine does the same at an edit. The command carries the model's own objects, so changing the model changes them.
        model.updateArrayFormulaCellData(unitId, subUnitId, cells);
        model.updateArrayFormulaRange(unitId, subUnitId, cells);
      }
    if (id === SetFormulaCalculationResultMutation.id) {
      const { unitData } = params as ISetFormulaCalculationResultMutation;
      for (const { unitId, subUnitId, cells } of edits)
        for (const [row, edited] of Object.entries(cells)) {
          const results = unitData[unitId]?.[subUnitId]?.[Number(row)];
          if (!results) continue;
          for (const column of Object.keys(edited)) Reflect.deleteProperty(results, column);
        }
    }
  });
  commands.onCommandExecuted(({ id, params }, options) => {
    if (id === SetRangeValuesMutation.id && !options?.["fromFormula"])
      edits.push(contentEdit(params as ISetRangeValuesMutationParams));
  });
};
