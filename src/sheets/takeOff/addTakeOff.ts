import { InputError } from "../../../shared/inputError";
import type { Existing, Host } from "../../hosts/host";
import { freeName, includesName } from "../freeName";
import { PANEL_NAME, PANEL_VALUE_NAMES } from "../panelSheet";
import { ROOF_NAMES } from "../roofSheet/names";
import type { TakeOffOptions } from "./options";
import { takeOffPlan, USUAL_NAMES, type TakeOffSheetNames } from "./takeOff";

/** A workbook describes one footprint: its names can't stand for two. */
const refuseSecondRoof = (names: readonly string[]): void => {
  const taken = Object.values(ROOF_NAMES).find((name) => includesName(names, name));
  if (taken !== undefined)
    throw new InputError(
      `This workbook uses the name ${taken} already, and one workbook describes one footprint. Build it in another workbook; nothing was written.`,
    );
};

/** New names for new sheets; a workbook that has a panel sheet keeps it, and one whose names clash is left alone. */
export const chooseSheetNames = ({ sheets, names }: Existing, withRoof: boolean): TakeOffSheetNames => {
  if (withRoof) refuseSecondRoof(names);
  const own = { takeOff: freeName(USUAL_NAMES.takeOff, sheets), roof: freeName(USUAL_NAMES.roof, sheets) };
  const wanted = [PANEL_NAME, ...PANEL_VALUE_NAMES];
  const there = wanted.filter((name) => includesName(names, name));
  if (there.length === wanted.length) return { ...own, panel: undefined };
  if (there.length > 0)
    throw new InputError(
      `This workbook uses the name ${there[0]} for something else. Rename it, or build the take-off in another workbook; nothing was written.`,
    );
  return { ...own, panel: freeName(USUAL_NAMES.panel, sheets) };
};

/** Adds a take-off to a workbook, and says which sheets it wrote. */
export const addTakeOff = async (host: Host, options: TakeOffOptions): Promise<readonly string[]> => {
  const plan = takeOffPlan(options, chooseSheetNames(await host.existing(), options.roof !== undefined));
  await host.write(plan);
  return plan.sheets.map(({ name }) => name);
};
