import { sha256 } from "@noble/hashes/sha2";
import { utf8ToBytes } from "@noble/hashes/utils";
import type { Cell, Matrix } from "./cell";
import { KEPT_DIGITS } from "./money";

/** As many bytes as a number of a spreadsheet holds whole: it stays the same in every program and every file. */
const SEAL_BYTES = 6;

/** What a person sees in a cell. Hosts and files differ on blank or empty text, on line ends and beyond the 15th digit. */
const seen = (cell: Cell): Cell => {
  if (cell === "") return null;
  if (typeof cell === "number") return Number(cell.toPrecision(KEPT_DIGITS));
  return typeof cell === "string" ? cell.replaceAll("\r\n", "\n") : cell;
};

/** A whole number that another content of the cells would hardly have: the first six bytes of the SHA-256 of their JSON. */
export const sealOf = (cells: Matrix): number =>
  sha256(utf8ToBytes(JSON.stringify(cells.map((row) => row.map(seen)))))
    .subarray(0, SEAL_BYTES)
    .reduce((number, byte) => number * 256 + byte, 0);
