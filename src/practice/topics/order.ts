import { packsSpec } from "../../../functions/orders/packs";
import { squares, squaresSpec } from "../../../functions/orders/squares";
import { feetSpec } from "../../../functions/measure/feet";
import { wholeCount } from "../../../shared/rounding";
import { SQ_FT_PER_SQUARE, SQ_INCHES_PER_SQ_FOOT } from "../../../shared/units";
import { call } from "../../workbook/formula";
import {
  areaAnswer,
  areaUnit,
  countAnswer,
  inAreaUnit,
  mistakesOf,
  numberAnswer,
  sqFtOf,
  writeArea,
  type Slips,
} from "../answers";
import type { Topic } from "../problem";
import { plain, quoted, step } from "../steps";

export type OrderFacts = {
  readonly areaSqFt: number;
  readonly wastePercent: number;
  readonly exposedWidthIn: number;
  readonly exposedHeightIn: number;
  readonly perPack: number;
};

const PERCENT = 100;
const SQUARES_TOLERANCE = 0.02;

const wasteOf = ({ wastePercent }: OrderFacts): number => wastePercent / PERCENT;
const panelSqIn = ({ exposedWidthIn, exposedHeightIn }: OrderFacts): number =>
  exposedWidthIn * exposedHeightIn;
const panelSqFt = (facts: OrderFacts): number => panelSqIn(facts) / SQ_INCHES_PER_SQ_FOOT;
const panelsFor = (facts: OrderFacts, waste: number): number =>
  (facts.areaSqFt * (1 + waste)) / panelSqFt(facts);

const quantityOfPacks = (facts: OrderFacts): number => panelsFor(facts, wasteOf(facts)) / facts.perPack;
/** Whole packs for an order. */
export const packsOf = (facts: OrderFacts): number => wholeCount(quantityOfPacks(facts));

/** Of a panel's area: in m² they are all there are, in sq ft so many are written down. */
const PANEL_DECIMALS = { "feet and inches": 3, metric: 4 } as const;

const AREA: Slips<OrderFacts> = {
  "forgot the waste": ({ areaSqFt }) => areaSqFt,
  "took the waste off": (facts) => facts.areaSqFt * (1 - wasteOf(facts)),
};

const PANELS: Slips<OrderFacts> = {
  "forgot the waste": (facts) => Math.ceil(panelsFor(facts, 0)),
  "took the waste off": (facts) => Math.ceil(panelsFor(facts, -wasteOf(facts))),
};

const PACKS: Slips<OrderFacts> = {
  "forgot the waste": (facts) => Math.ceil(panelsFor(facts, 0) / facts.perPack),
  "took the waste off": (facts) => Math.ceil(panelsFor(facts, -wasteOf(facts)) / facts.perPack),
  "gave panels for packs": (facts) => Math.ceil(panelsFor(facts, wasteOf(facts))),
};

export const orderTopic: Topic<OrderFacts> = {
  id: "order",
  teachAgain:
    "Price one pack too few against one too many: order whole packs, the waste counted before rounding up.",
  draw: (random, { level, measuring }) => {
    const isMetric = measuring.units === "metric";
    const step = level === "first hour" ? 20 : 1;
    const area = isMetric ? random.whole(60 / step, 240 / step) : random.whole(600 / step, 2_600 / step);
    return {
      areaSqFt: sqFtOf(area * step, measuring),
      wastePercent: random.pick(level === "first hour" ? [10] : [5, 8, 10, 12, 15]),
      exposedWidthIn: measuring.pickIn(random, [24, 20, 16], [600, 500, 400]),
      exposedHeightIn: measuring.pickIn(random, [12, 10, 9], [300, 250, 225]),
      perPack: random.pick([8, 10, 12]),
    };
  },
  ask: ({ areaSqFt, wastePercent, exposedWidthIn, exposedHeightIn, perPack }, { measuring }) => ({
    words:
      measuring.units === "metric"
        ? "Shingles are ordered for a roof's area, with an allowance for waste. Find the area to order for, how many panels that takes, and how many whole packs."
        : "Shingles are ordered for a roof's area, with an allowance for waste. A square is 100 sq ft. Find the squares to order, how many panels that takes, and how many whole packs.",
    givens: [
      { label: "Area on the slope", text: writeArea(areaSqFt, measuring) },
      { label: "Waste", text: `${wastePercent} %` },
      {
        label: "A panel shows",
        text: `${measuring.writeSmall(exposedWidthIn)} × ${measuring.writeSmall(exposedHeightIn)}`,
      },
      { label: "Panels in a pack", text: String(perPack) },
    ],
  }),
  solve: (facts, { measuring }) => {
    const { areaSqFt, wastePercent, exposedWidthIn, exposedHeightIn, perPack } = facts;
    const { writeSmall } = measuring;
    const isMetric = measuring.units === "metric";
    const area = Math.round(inAreaUnit(areaSqFt, measuring));
    const toOrderSqFt = areaSqFt * (1 + wasteOf(facts));
    const quantity = panelsFor(facts, wasteOf(facts));
    const panels = wholeCount(quantity);
    const ofPacks = quantityOfPacks(facts);
    const waste = quoted(`${wastePercent}%`);
    const feet = (lengthIn: number): string => call(feetSpec, quoted(writeSmall(lengthIn)));
    const panel = `(${feet(exposedWidthIn)}*${feet(exposedHeightIn)})`;
    const sqFt = isMetric ? `${area}/${inAreaUnit(1, measuring)}` : String(area);
    const panelShown = plain(inAreaUnit(panelSqFt(facts), measuring), PANEL_DECIMALS[measuring.units]);
    const ofOrder = inAreaUnit(toOrderSqFt, measuring);
    const orderShown = plain(ofOrder, 2);
    const areaWords = `${area} × ${plain(1 + wasteOf(facts), 2)} = ${orderShown} ${areaUnit(measuring)}`;
    const panelWords = `A panel shows ${writeSmall(exposedWidthIn)} × ${writeSmall(exposedHeightIn)} = `;
    const divided = isMetric
      ? `${panelShown} m²; ${orderShown} ÷ ${panelShown}`
      : `${panelSqIn(facts)} sq in, about ${panelShown} sq ft; ${orderShown} × ${SQ_INCHES_PER_SQ_FOOT} ÷ ${panelSqIn(facts)}`;
    const toOrder = isMetric
      ? areaAnswer("Area to order for", toOrderSqFt, measuring, mistakesOf(AREA, facts))
      : numberAnswer(
          "Squares to order",
          squares(areaSqFt, wasteOf(facts)),
          2,
          mistakesOf(AREA, facts).map(({ slip, value }) => ({ slip, value: value / SQ_FT_PER_SQUARE })),
          {
            unit: "squares",
            tolerance: SQUARES_TOLERANCE,
            why: `${SQUARES_TOLERANCE}: the last decimal`,
          },
        );
    // Someone may go on with what was written down: both areas rounded.
    const panelsAsWritten =
      (parseFloat(toOrder.shown) * (isMetric ? 1 : SQ_FT_PER_SQUARE)) / Number(panelShown);
    return {
      answers: [
        toOrder,
        countAnswer("Panels", "panels", quantity, mistakesOf(PANELS, facts), panelsAsWritten),
        countAnswer("Packs", "packs", ofPacks, mistakesOf(PACKS, facts)),
      ],
      steps: [
        isMetric
          ? step(
              `${areaWords}; to one decimal ${writeArea(toOrderSqFt, measuring)}.`,
              `${call(squaresSpec, sqFt, waste)}*${inAreaUnit(SQ_FT_PER_SQUARE, measuring)}`,
              ofOrder,
            )
          : step(
              `${areaWords}; ÷ 100 = ${squares(areaSqFt, wasteOf(facts)).toFixed(2)} squares.`,
              call(squaresSpec, sqFt, waste),
              squares(areaSqFt, wasteOf(facts)),
            ),
        step(
          `${panelWords}${divided} = ${plain(quantity, 2)}: ${panels} panels.`,
          call(packsSpec, sqFt, panel, waste),
          panels,
        ),
        step(
          `${panels} ÷ ${perPack} = ${plain(panels / perPack, 2)}: ${wholeCount(ofPacks)} packs.`,
          call(packsSpec, sqFt, `${panel}*${perPack}`, waste),
          wholeCount(ofPacks),
        ),
      ],
    };
  },
};
