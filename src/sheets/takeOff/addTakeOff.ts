import { InputError } from "../../../shared/inputError";
import type { Existing, Host } from "../../hosts/host";
import { freeName, includesName } from "../freeName";
import { PANEL_NAME, PANEL_VALUE_NAMES } from "../panelSheet";
import type { TakeOffOptions } from "./options";
import { takeOffPlan, USUAL_NAMES, type TakeOffSheetNames } from "./takeOff";

/** New names for new sheets; a workbook that has a panel sheet keeps it, and one whose names clash is left alone. */
export const chooseSheetNames = ({ sheets, names }: Existing): TakeOffSheetNames => {
  const takeOff = freeName(USUAL_NAMES.takeOff, sheets);
  const wanted = [PANEL_NAME, ...PANEL_VALUE_NAMES];
  const there = wanted.filter((name) => includesName(names, name));
  if (there.length === wanted.length) return { takeOff, panel: undefined };
  if (there.length > 0)
    throw new InputError(
      `This workbook uses the name ${there[0]} for something else. Rename it, or build the take-off in another workbook; nothing was written.`,
    );
  return { takeOff, panel: freeName(USUAL_NAMES.panel, sheets) };
};

/** Adds a take-off to a workbook, and says which sheets it wrote. */
export const addTakeOff = async (host: Host, options: TakeOffOptions): Promise<readonly string[]> => {
  const plan = takeOffPlan(options, chooseSheetNames(await host.existing()));
  await host.write(plan);
  return plan.sheets.map(({ name }) => name);
};
