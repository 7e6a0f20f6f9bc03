import { InputError } from "../../../shared/inputError";
import type { Host } from "../../workbook/host";
import type { Undo } from "../../workbook/patch";
import type { Contents } from "../../workbook/contents";
import { number } from "../../workbook/plan";
import {
  agreedChangeOrder,
  agreedChangeOrdersIn,
  isChangeOrder,
  sheetsListedOn,
  termValue,
  type ExistingChangeOrder,
} from "./existingChangeOrders";
import { dateWarnings } from "./dateWarnings";
import { TERMS } from "./changeOrderLayout";
import { issueSeal, issueSealAddress, sealedFigures } from "./seals";
import { refuseOverwrittenFormulas } from "./overwrittenFormulas";

export interface IssuedChangeOrder {
  readonly sheet: string;
  readonly seal: number;
  /** Warnings, one sentence each. */
  readonly remarks: readonly string[];
  readonly undo: Undo;
}

/** The contract sum may be left blank, but not by oversight. */
const remarksOn = (change: ExistingChangeOrder, before: readonly ExistingChangeOrder[]): string[] => [
  ...(typeof termValue(change, "contract") === "number"
    ? []
    : [`It shows no contract sum: "${TERMS.contract}" was left blank.`]),
  ...dateWarnings(termValue(change, "date"), before),
];

/** The change orders that one builds on. */
const changeOrdersBefore = (contents: Contents, change: ExistingChangeOrder): ExistingChangeOrder[] => {
  const listed = sheetsListedOn(contents, change);
  return agreedChangeOrdersIn(contents).filter(({ sheet }) => listed.has(sheet));
};

/** A change order from an earlier version of Gablewright may have no row for its seal. */
const isUnissued = (change: ExistingChangeOrder): boolean =>
  issueSealAddress(change) !== undefined && issueSeal(change) === undefined;

/** Issues the change order in front: writes the seal of its figures beside them, so that a later edit shows. */
export const issueActiveChangeOrder = async (host: Host): Promise<IssuedChangeOrder> => {
  const [contents, { sheet }] = await Promise.all([host.contents(), host.activeSheet()]);
  const inFront = contents.sheets.get(sheet);
  if (!inFront || !isChangeOrder(inFront))
    throw new InputError("Go to the change order that is to be issued. Nothing was written.");
  const change = agreedChangeOrder(contents, sheet, "issue");
  const { seal } = sealedFigures(change);
  const at = issueSealAddress(change);
  if (!at) throw new InputError(`"${sheet}" has no row for its seal: make it again. Nothing was written.`);
  if (issueSeal(change) !== undefined)
    throw new InputError(`"${sheet}" is issued already, under the seal ${seal}. Nothing was written.`);
  refuseOverwrittenFormulas(contents, change);
  const before = changeOrdersBefore(contents, change);
  // Filling it in later would change this one.
  const unissued = before.find(isUnissued);
  if (unissued)
    throw new InputError(`Issue "${unissued.sheet}" first: "${sheet}" goes on from it. Nothing was written.`);
  const undo = await host.putCells({ sheet, at, cells: [[{ content: number(seal) }]] });
  return { sheet, seal, remarks: remarksOn(change, before), undo };
};
