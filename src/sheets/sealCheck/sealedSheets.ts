import { isChangeOrder } from "../changeOrder/existingChangeOrders";
import { issueSeal } from "../changeOrder/seals";
import type { SheetContents } from "../../workbook/contents";
import { isSigned } from "../signedOrder/readSignedOrder";

/** What makes a sheet a document that was handed out; undefined for any other sheet. */
export const sealedAs = (contents: SheetContents): "signed" | "issued" | undefined => {
  if (isSigned(contents)) return "signed";
  return isChangeOrder(contents) && issueSeal({ contents }) !== undefined ? "issued" : undefined;
};
