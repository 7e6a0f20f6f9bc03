import { isChangeOrder } from "../changeOrder/earlier";
import { issuedUnder } from "../changeOrder/seals";
import type { SheetContents } from "../../workbook/contents";
import { isSigned } from "../signedBase/readSigned";

/** What makes a sheet a document that was handed out; undefined for any other sheet. */
export const sealedAs = (contents: SheetContents): "signed" | "issued" | undefined => {
  if (isSigned(contents)) return "signed";
  return isChangeOrder(contents) && issuedUnder({ contents }) !== undefined ? "issued" : undefined;
};
