import fc from "fast-check";
import type { Cell } from "../../../shared/cell";
import { call, callForNumber, callForSentence } from "../../support/call";

const cents = fc.integer({ min: -1_000_000_00, max: 1_000_000_00 });
const inDollars = (amount: number): number => amount / 100;
/** Tenths of a percent, so that a product with cents is a whole number of hundred-thousandths. */
const perMille = fc.integer({ min: 0, max: 1000 });

/** Half away from zero in whole numbers: an independent way to the same cent. */
const roundedCents = (hundredThousandths: number): number =>
  Math.sign(hundredThousandths) * Math.floor((Math.abs(hundredThousandths) + 500) / 1000);

describe("tax and retainage", () => {
  it.each(["SALESTAX", "RETAINAGE"])("%s is exact to the cent, as whole-number arithmetic shows", (id) => {
    fc.assert(
      fc.property(cents, perMille, (amount, rate) => {
        const expected = inDollars(roundedCents(amount * rate)) + 0;
        expect(callForNumber(id, inDollars(amount), rate / 1000)).toBe(expected);
      }),
    );
  });

  it("a credit reverses the charge", () => {
    fc.assert(
      fc.property(cents, perMille, (amount, rate) => {
        const [charge, credit] = [amount, -amount].map((each) =>
          callForNumber("SALESTAX", inDollars(each), rate / 1000),
        ) as [number, number];
        expect(charge + credit).toBe(0);
      }),
    );
  });

  /** Streamlined Sales and Use Tax Agreement, section 324: the third decimal decides, and only it. */
  it.each([
    [1.234, 1.23],
    [1.235, 1.24],
    [0.6846, 0.68],
    [1.005, 1.01],
  ])("rounds %d to %d, once", (tax, rounded) => {
    expect(callForNumber("SALESTAX", tax, 1)).toBe(rounded);
  });

  it("rounds the decimal amount that a person sees, not its binary fraction", () => {
    expect(callForNumber("SALESTAX", 0.335 * 3, 1)).toBe(1.01);
  });
});

/** Half away from zero of a quotient, in whole numbers of any length. */
const roundedQuotient = (dividend: bigint, divisor: bigint): number => {
  const [size, sign] = dividend < 0n ? [-dividend, -1] : [dividend, 1];
  return sign * Number((2n * size + divisor) / (2n * divisor));
};

describe("markup and margin", () => {
  const MILLION = 1_000_000n;
  const millionths = fc.oneof(fc.nat(999_999), fc.integer({ min: 999_000, max: 999_999 }));

  it("MARKUP is exact to the cent, as whole-number arithmetic shows", () => {
    fc.assert(
      fc.property(cents, millionths, (cost, rate) => {
        const expected = inDollars(roundedQuotient(BigInt(cost) * (MILLION + BigInt(rate)), MILLION)) + 0;
        expect(callForNumber("MARKUP", inDollars(cost), rate / 1_000_000)).toBe(expected);
      }),
    );
  });

  it("SELLPRICE is exact to the cent, as whole-number arithmetic shows, even at margins near 100%", () => {
    fc.assert(
      fc.property(cents, millionths, (cost, margin) => {
        const expected = inDollars(roundedQuotient(BigInt(cost) * MILLION, MILLION - BigInt(margin))) + 0;
        expect(callForNumber("SELLPRICE", inDollars(cost), margin / 1_000_000)).toBe(expected);
      }),
    );
  });

  it.each([
    ["MARKUP", 0.2, 0.025, 0.21],
    ["MARKUP", 1.1, 0.05, 1.16],
    ["SELLPRICE", 0.25, 0.6, 0.63],
    ["SELLPRICE", 1.01, 0.2, 1.26],
    ["SELLPRICE", -0.25, 0.6, -0.63],
  ])("half a cent rounds away from zero: %s of %d and %d is %d", (id, cost, rate, price) => {
    expect(callForNumber(id, cost, rate)).toBe(price);
  });

  it("a margin and its equivalent markup give the same price, within the cent both are rounded to", () => {
    const margins = fc.integer({ min: 0, max: 90 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000_00 }), margins, (cost, margin) => {
        const price = callForNumber("SELLPRICE", inDollars(cost), margin / 100);
        const same = callForNumber("MARKUP", inDollars(cost), margin / (100 - margin));
        expect(Math.abs(price - same)).toBeLessThan(0.011);
      }),
    );
  });

  it("a cost of 4.00 with a markup of 25 % sells at 5.00 (worked example of the lesson Markup, aaamath.com)", () => {
    expect(callForNumber("MARKUP", 4, "25%")).toBe(5);
  });

  it("a cost of 8.57 sells at 11.74 with a margin of 27 % (worked example of the profit-margin page, calcunation.com)", () => {
    expect(callForNumber("SELLPRICE", 8.57, "27%")).toBe(11.74);
  });

  it("a cost of 30 sells at 40 with a margin of 25 %, at 45 with 33.33 % (worked example of the profit-margin page, calcfxc.com)", () => {
    expect(callForNumber("SELLPRICE", 30, "25%")).toBe(40);
    expect(callForNumber("SELLPRICE", 30, "33.33%")).toBe(45);
  });

  it("a cost of 40 with a markup of 50 % sells at 60, a margin of a third: arithmetic, no published source", () => {
    expect(callForNumber("MARKUP", 40, 0.5)).toBe(60);
    expect(callForNumber("SELLPRICE", 40, "33.3333333333333%")).toBe(60);
  });
});

type Line = readonly [item: string, quantity: number, price: number];
const orders = fc
  .uniqueArray(
    fc.tuple(
      fc.constantFrom("panels", "ridge", "hip", "valley", "nails", "clips"),
      fc.nat(5000),
      fc.nat(100_00),
    ),
    {
      selector: ([item]) => item,
      minLength: 1,
    },
  )
  .map((lines): Line[] => lines.map(([item, quantity, price]) => [item, quantity, inDollars(price)]));

const totalOf = (before: readonly Line[], after: readonly Line[]): number =>
  ((call("CHANGEORDER", before, after, false) as Cell[][]).at(-1) as Cell[])[7] as number;

/** In whole cents: the quantities are whole. */
const worth = (lines: readonly Line[]): number =>
  lines.reduce((sum, [, quantity, price]) => sum + quantity * Math.round(price * 100), 0);

describe("change orders", () => {
  it("base plus change equals the new order, to the cent", () => {
    fc.assert(
      fc.property(orders, orders, (before, after) => {
        expect(Math.round(totalOf(before, after) * 100)).toBe(worth(after) - worth(before));
      }),
    );
  });

  it("a chain of changes equals the change from its first to its last", () => {
    fc.assert(
      fc.property(fc.array(orders, { minLength: 2, maxLength: 6 }), (chain) => {
        const steps = chain.slice(1).map((after, index) => totalOf(chain[index] ?? [], after));
        const sum = steps.reduce((total, step) => total + Math.round(step * 100), 0);
        expect(sum).toBe(Math.round(totalOf(chain[0] ?? [], chain.at(-1) ?? []) * 100));
      }),
    );
  });

  it("a change and its reversal add up to zero, and the order of lines doesn't matter", () => {
    fc.assert(
      fc.property(orders, orders, (before, after) => {
        expect(totalOf(before, after) + totalOf(after, before)).toBe(0);
        expect(totalOf([...before].reverse(), [...after].reverse())).toBe(totalOf(before, after));
      }),
    );
  });

  it.each([
    [
      [
        ["panels", 1, 2],
        ["Panels ", 3, 4],
      ],
      'before has "Panels" twice: an item may stand there once',
    ],
    [
      [["panels", 1, null]],
      'before: the price of "panels" is missing: it takes an amount of money such as 12.50',
    ],
    [[["panels", "many", 2]], 'before: the quantity of "panels" takes a number, got "many"'],
    [[[null, 1, 2]], "before has a line without an item"],
    [[["panels", 1]], "before takes three columns, item, quantity and price, got 2"],
  ])("rejects %j with a message", (before, sentence) => {
    expect(callForSentence("CHANGEORDER", before as Cell[][], [["panels", 1, 2]])).toBe(
      `#VALUE! ${sentence}`,
    );
  });
});
