import { wholeBetween, type Random } from "../support/random";

/** The smallest and largest random value for an argument; text is used unchanged. */
type Range = readonly [number, number];

interface Native {
  readonly formula: string;
  readonly ranges: readonly (Range | string)[];
}

/**
 * The same results in native spreadsheet formulas, written from the mathematics and not from our code. The arguments are a, b, c ...
 * in order. Rounding to nine digits keeps floating-point error from adding one to a count, as a careful estimator would write it.
 * Add every function that takes single cells and returns a number.
 */
export const NATIVE: Readonly<Record<string, Native>> = {
  FEET: { formula: "a", ranges: [[0, 500]] },
  INCHES: { formula: "a*12", ranges: [[0, 500]] },
  BENDANGLE: {
    formula: "DEGREES(ACOS(COS(ATAN(b/12))*COS(ATAN(c/12))))",
    ranges: ["hip", [1, 24], [1, 24]],
  },
  // Gere, Mechanics of Materials, 5th ed.: steel 12e-6 per degree Celsius, 490 lb per cu ft.
  THERMALMOVE: { formula: "a*12*(12E-6/1.8)*b", ranges: [[1, 40], [-100, 150], "galvanized steel"] },
  SHEETWEIGHT: { formula: "490*b/12", ranges: ["galvanized steel", [0.01, 0.1]] },
  PITCHANGLE: { formula: "DEGREES(ATAN(a/12))", ranges: [[1, 24]] },
  ANGLEPITCH: { formula: "12*TAN(RADIANS(a))", ranges: [[0, 63]] },
  RAFTERFACTOR: { formula: "SQRT(1+(a/12)^2)", ranges: [[1, 24]] },
  HIPFACTOR: {
    formula: "SQRT(1+(a/b)^2+(a/12)^2)",
    ranges: [
      [1, 24],
      [1, 24],
    ],
  },
  RAFTERLENGTH: {
    formula: "(a+c)/COS(ATAN(b/12))",
    ranges: [
      [1, 60],
      [1, 24],
      [0, 3],
    ],
  },
  HIPLENGTH: {
    formula: "SQRT(a^2+(a*b/c)^2+(a*b/12)^2)",
    ranges: [
      [1, 60],
      [1, 24],
      [1, 24],
    ],
  },
  SLOPEAREA: {
    formula: "a/COS(ATAN(b/12))",
    ranges: [
      [1, 5000],
      [1, 24],
    ],
  },
  FACEANGLE: {
    formula: "DEGREES(ATAN(SQRT(1+(a/12)^2)/(a/b)))",
    ranges: [
      [1, 24],
      [1, 24],
    ],
  },
  COURSES: {
    formula: "ROUNDUP(ROUND(a*12/b;9);0)",
    ranges: [
      [0, 60],
      [6, 18],
    ],
  },
  COURSELINE: {
    formula: "c+(a-1)*b/12",
    ranges: [
      [1, 60],
      [6, 18],
      [0, 2],
    ],
  },
  TOPCOURSE: {
    formula: "a*12-(ROUNDUP(ROUND(a*12/b;9);0)-1)*b",
    ranges: [
      [1, 60],
      [6, 18],
    ],
  },
  STARTERCOVER: {
    formula: "CHOOSE(MOD(a-1;4)+1;1;1/2;3/4;1/4)*b-c",
    ranges: [
      [1, 60],
      [12, 36],
      [0, 2],
    ],
  },
  STARTERBLANK: {
    formula: "CHOOSE(MOD(a-1;4)+1;1;1/2;3/4;1/4)*b-c+d",
    ranges: [
      [1, 60],
      [12, 36],
      [0, 2],
      [0, 3],
    ],
  },
  STARTERSETS: {
    formula: "ROUNDUP(ROUNDUP(ROUND(a*12/b;9);0)/4;0)",
    ranges: [
      [1, 60],
      [6, 18],
    ],
  },
  TRIMPIECES: {
    formula: "ROUNDUP(ROUND((a*12-c)/(b-c);9);0)",
    ranges: [
      [1, 120],
      [96, 144],
      [0, 6],
    ],
  },
  CLIPCOUNT: {
    formula: "SIGN(a)*(ROUNDUP(ROUND(a*12/b;9);0)-1+2)",
    ranges: [
      [0, 120],
      [6, 24],
    ],
  },
  NAILCOUNT: {
    formula: "SIGN(a)*c*(ROUNDUP(ROUND(a*12/b;9);0)+1)",
    ranges: [
      [0, 120],
      [6, 24],
      [1, 3],
    ],
  },
  NAILPOUNDS: {
    formula: "a/b",
    ranges: [
      [1, 5000],
      [100, 400],
    ],
  },
  UNDERLAYMENT: {
    formula: "ROUNDUP(ROUND((ROUNDUP(ROUND((b*12+2*g-e)/(c-e);9);0)*(a*12+2*g)-f)/(d-f);9);0)",
    ranges: [
      [5, 90],
      [5, 40],
      [36, 48],
      [600, 900],
      [0, 6],
      [0, 12],
      [1, 6],
    ],
  },
  ICEBARRIER: {
    formula: "ROUNDUP(ROUND((MAX((b+c+24)*SQRT(1+(a/12)^2);IF(a>=8;36;0))-e)/(d-e);9);0)",
    ranges: [
      [3, 24],
      [0, 36],
      [0, 12],
      [30, 48],
      [0, 6],
    ],
  },
  VENTAREA: { formula: "a*144/150", ranges: [[1, 5000]] },
  SQUARES: {
    formula: "a*(1+b)/100",
    ranges: [
      [1, 5000],
      [0, 0.25],
    ],
  },
  PACKS: {
    formula: "ROUNDUP(ROUND(a*(1+c)/b;9);0)",
    ranges: [
      [1, 5000],
      [1, 60],
      [0, 0.25],
    ],
  },
  SELLPRICE: {
    formula: "ROUND(a/(1-b);2)",
    ranges: [
      [1, 90_000],
      [0, 0.6],
    ],
  },
  MARKUP: {
    formula: "ROUND(a*(1+b);2)",
    ranges: [
      [1, 90_000],
      [0, 2],
    ],
  },
  SALESTAX: {
    formula: "ROUND(a*b;2)",
    ranges: [
      [1, 90_000],
      [0, 0.12],
    ],
  },
  RETAINAGE: {
    formula: "ROUND(a*b;2)",
    ranges: [
      [1, 90_000],
      [0, 0.1],
    ],
  },
};

/** Arguments that are counts, so they must be whole numbers. */
const WHOLE: Readonly<Record<string, readonly number[]>> = {
  COURSELINE: [0],
  STARTERCOVER: [0],
  STARTERBLANK: [0],
  NAILCOUNT: [2],
};

/** Whole numbers, sixteenths, hundredths and long fractions: values as measured and as calculated elsewhere. */
const numberIn = (random: Random, [least, most]: Range, isWhole: boolean): number => {
  const step = isWhole || random() < 0.3 ? 1 : ([1 / 16, 1 / 100, 1e-7] as const)[wholeBetween(random, 0, 2)];
  const value = Math.round((least + random() * (most - least)) / (step ?? 1)) * (step ?? 1);
  return Number(Math.min(most, Math.max(least, value)).toFixed(9));
};

/** Random arguments for a function, within their ranges. */
export const drawArguments = (id: string, random: Random): (number | string)[] =>
  (NATIVE[id]?.ranges ?? []).map((range, index) =>
    typeof range === "string" ? range : numberIn(random, range, WHOLE[id]?.includes(index) ?? false),
  );

/** The formula with each argument substituted. Only single letters are arguments. */
export const nativeFormula = (id: string, argumentAt: (index: number) => string): string =>
  (NATIVE[id]?.formula ?? "").replace(/\b[a-g]\b/g, (letter) => argumentAt(letter.charCodeAt(0) - 97));
