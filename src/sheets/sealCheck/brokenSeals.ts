import { InputError } from "../../../shared/inputError";
import { changeOrdersIn } from "../changeOrder/existingChangeOrders";
import { issueSeal, sealedFigures } from "../changeOrder/seals";
import type { Contents } from "../../workbook/contents";
import { isSigned, readSignedOrder } from "../signedOrder/readSignedOrder";

const isRefused = (read: () => unknown): boolean => {
  try {
    read();
    return false;
  } catch (failure) {
    if (failure instanceof InputError) return true;
    throw failure;
  }
};

const listed = (sheets: readonly string[]): string =>
  new Intl.ListFormat("en").format(sheets.map((name) => `"${name}"`));

const sentence = (sheets: readonly string[], one: string, many: string): string[] =>
  sheets.length === 0 ? [] : [`${listed(sheets)} ${sheets.length === 1 ? one : many}`];

/** Warnings about edited signed orders and edited change orders. */
export const brokenSeals = (contents: Contents): string[] => {
  const signed = [...contents.sheets]
    .filter(([name, sheet]) => isSigned(sheet) && isRefused(() => readSignedOrder(contents, name)))
    .map(([name]) => name);
  const issued = changeOrdersIn(contents)
    .filter((change) => issueSeal(change) !== undefined && isRefused(() => sealedFigures(change)))
    .map(({ sheet }) => sheet);
  return [
    ...sentence(signed, "was edited since it was signed.", "were edited since they were signed."),
    ...sentence(issued, "isn't as it was issued.", "aren't as they were issued."),
  ];
};
