import { readDecimal, readSignedAmount, signed, splitSign, tidyText } from "../amountText";
import { InputError } from "../inputError";
import { describeCell } from "../describe";
import { limitsOf, notTaken, withinLimits, type Bounds } from "./bounds";
import { NAME_ENDINGS, UNIT_OF_NAME_ENDING, type CellKind } from "./kind";

const numberKind = (
  takes: string,
  unit: string,
  bounds: Bounds,
  readText: (text: string) => number | undefined,
): CellKind<number> => {
  const limits = limitsOf(bounds);
  return {
    shape: "cell",
    takes,
    read: (cell, label) => {
      const value = typeof cell === "string" ? readText(cell) : cell;
      if (typeof value !== "number") throw notTaken(label, takes, cell);
      return withinLimits(value, limits, label, unit, cell);
    },
  };
};

/** Far above any job, far below where whole numbers stop being exact. */
const LARGEST_QUANTITY = 1e9;

/** A quantity with a unit of its own, such as an area in sq ft. */
export const quantity = (unit: string, bounds: Bounds = { atLeast: 0 }): CellKind<number> => ({
  ...numberKind(
    unit === "" ? "a number" : `a number of ${unit}`,
    unit,
    { atMost: LARGEST_QUANTITY, ...bounds },
    (text) => readSignedAmount(tidyText(text)),
  ),
  nameEnding: NAME_ENDINGS.find((ending) => UNIT_OF_NAME_ENDING[ending] === unit),
});

/** An angle in degrees; the sign or word may follow it. */
export const degrees = (bounds: Bounds): CellKind<number> => ({
  ...numberKind("an angle in degrees such as 26.57", "degrees", bounds, (text) =>
    readSignedAmount(tidyText(text).replace(/ ?(?:°|degrees|deg\.?)$/, "")),
  ),
  nameEnding: "Degrees",
});

/** A share of 1: `0.1`, `10%` or `1/2`. */
export const fraction = (bounds: Bounds = { atLeast: 0, atMost: 1 }): CellKind<number> => ({
  ...numberKind("a fraction such as 0.1, 10% or 1/2", "", bounds, (text) => {
    const tidy = tidyText(text);
    const { sign, unsigned } = splitSign(tidy);
    const percent = /^(\S+?) ?%$/.exec(unsigned);
    if (!percent) return readSignedAmount(tidy);
    const amount = readDecimal(percent[1] ?? "");
    return amount === undefined ? undefined : signed(sign, amount / 100);
  }),
  bareNumber: "fraction",
});

/** An amount of money, with or without a dollar sign and thousands commas; a credit has a minus. */
export const money = (bounds: Bounds = { atLeast: 0 }): CellKind<number> =>
  numberKind("an amount of money such as 12.50", "", { atMost: LARGEST_QUANTITY, ...bounds }, (text) => {
    const { sign, unsigned } = splitSign(tidyText(text));
    const plain = /^\$? ?(\d{1,3}(?:,\d{3})+(?:\.\d*)?|[\d.]+)$/.exec(unsigned);
    const amount = plain ? readDecimal((plain[1] ?? "").replaceAll(",", "")) : undefined;
    return amount === undefined ? undefined : signed(sign, amount);
  });

/** A whole number of things. */
export const count = (bounds: Bounds = { atLeast: 1 }): CellKind<number> => {
  const number = quantity("", bounds);
  return {
    ...number,
    takes: "a whole number",
    read: (cell, label) => {
      const value = number.read(cell, label);
      if (!Number.isInteger(value))
        throw new InputError(`${label} must be a whole number, got ${describeCell(cell)}`);
      return value;
    },
  };
};
