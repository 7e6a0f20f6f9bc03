import { isChangeOrder } from "../changeOrder/existingChangeOrders";
import { issueSeal } from "../changeOrder/seals";
import type { SheetContents } from "../../workbook/contents";
import { isSigned } from "../signedOrder/readSignedOrder";

/** Whether a sheet is a signed order or an issued change order; undefined for other sheets. */
export const sealedAs = (contents: SheetContents): "signed" | "issued" | undefined => {
  if (isSigned(contents)) return "signed";
  return isChangeOrder(contents) && issueSeal({ contents }) !== undefined ? "issued" : undefined;
};
