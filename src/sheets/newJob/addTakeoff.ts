import type { Cell } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { TRIM_EDGES } from "../../../shared/trimKinds";
import type { Added, Existing, Host } from "../../workbook/host";
import { uniqueName, includesName } from "../../workbook/uniqueName";
import { PANEL_NAME, PANEL_VALUE_NAMES } from "../panelSheet";
import { ROOF_NAMES } from "../roofSheet/roofSheetNames";
import { TRIMS_TABLE_WIDTH, TRIMS_SHEET_COLUMNS, TRIMS_NAME } from "../takeoff/trimsSheet";
import type { TakeoffOptions } from "../takeoff/takeoffOptions";
import { takeoffPlan, USUAL_NAMES, type TakeoffSheetNames } from "./takeoffPlan";

/** A workbook has one footprint, because its defined names are unique. */
const refuseSecondRoof = (names: readonly string[]): void => {
  const taken = Object.values(ROOF_NAMES).find((name) => includesName(names, name));
  if (taken !== undefined)
    throw new InputError(
      `This workbook already uses the name ${taken}, and a workbook has only one footprint. Build this one in another workbook. Nothing was written.`,
    );
};

/** Whether a workbook has all of these names. Throws an InputError if it has only some, for something else. */
const hasAll = (names: readonly string[], wanted: readonly string[]): boolean => {
  const there = wanted.filter((name) => includesName(names, name));
  if (there.length > 0 && there.length < wanted.length)
    throw new InputError(
      `This workbook uses the name ${there[0]} for something else. Rename it, or build the takeoff in another workbook. Nothing was written.`,
    );
  return there.length === wanted.length;
};

/** Unique names for the new sheets. A workbook keeps the panel sheet and the Trims sheet that it has. */
export const chooseSheetNames = ({ sheets, names }: Existing, withRoof: boolean): TakeoffSheetNames => {
  if (withRoof) refuseSecondRoof(names);
  const free = (sheet: keyof typeof USUAL_NAMES): string => uniqueName(USUAL_NAMES[sheet], sheets);
  const hasPanel = hasAll(names, [PANEL_NAME, ...PANEL_VALUE_NAMES]);
  return {
    takeoff: free("takeoff"),
    order: free("order"),
    cuts: free("cuts"),
    roof: free("roof"),
    trims: includesName(names, TRIMS_NAME) ? undefined : free("trims"),
    panel: hasPanel ? undefined : free("panel"),
  };
};

/** Throws an InputError if the name Trims refers to something other than our table. */
const refuseOtherTrims = async (host: Host, { names }: Existing): Promise<void> => {
  if (!includesName(names, TRIMS_NAME)) return;
  const rows = (await host.namedRange(TRIMS_NAME)) ?? [];
  const isOurs = rows.some(
    (row) => row.length === TRIMS_TABLE_WIDTH && isTrimEdge(row[TRIMS_SHEET_COLUMNS.follows]),
  );
  if (!isOurs)
    throw new InputError(
      `This workbook uses the name ${TRIMS_NAME} for something else. Rename it, or build the takeoff in another workbook. Nothing was written.`,
    );
};

const isTrimEdge = (cell: Cell | undefined): boolean => TRIM_EDGES.some((edge) => edge === cell);

/** Adds a takeoff with its order, cuts, trims, panel and roof sheets. */
export const addTakeoff = async (host: Host, options: TakeoffOptions): Promise<Added> => {
  const existing = await host.existing();
  await refuseOtherTrims(host, existing);
  const plan = takeoffPlan(options, chooseSheetNames(existing, options.roof !== undefined));
  const undo = await host.addSheets(plan);
  return { sheets: plan.sheets.map(({ name }) => name), undo };
};
