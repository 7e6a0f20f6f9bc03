import type { CellAddress } from "../../src/workbook/address";

/** The row and column of `B4`, so that tests can name cells the way people do. */
export const placeOf = (address: string): CellAddress => {
  const [, letters = "A", digits = "1"] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
};
