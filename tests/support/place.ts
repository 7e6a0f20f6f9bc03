import type { CellAddress } from "../../src/workbook/address";

/** `B4` as a place; tests speak of cells as a person would. */
export const placeOf = (address: string): CellAddress => {
  const [, letters = "A", digits = "1"] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
};
