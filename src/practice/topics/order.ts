import { packsSpec } from "../../../functions/orders/packs";
import { squares, squaresSpec } from "../../../functions/orders/squares";
import { feetSpec } from "../../../functions/measure/feet";
import { wholeCount } from "../../../shared/rounding";
import { SQ_FT_PER_SQUARE, SQ_INCHES_PER_SQ_FOOT } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { areaAnswer, areaUnit, inAreaUnit, sqFtOf, writeArea } from "../answers/area";
import { countAnswer } from "../answers/count";
import { numberAnswer } from "../answers/number";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import type { Topic } from "../topic";
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
/** Whole packs to order. */
export const packsOf = (facts: OrderFacts): number => wholeCount(quantityOfPacks(facts));

/** Of a panel's area: exact in m², rounded in sq ft. */
const PANEL_DECIMALS = { "feet and inches": 3, metric: 4 } as const;

const AREA: CommonMistakes<OrderFacts> = {
  "left out the waste": ({ areaSqFt }) => areaSqFt,
  "subtracted the waste": (facts) => facts.areaSqFt * (1 - wasteOf(facts)),
};

const PANELS: CommonMistakes<OrderFacts> = {
  "left out the waste": (facts) => Math.ceil(panelsFor(facts, 0)),
  "subtracted the waste": (facts) => Math.ceil(panelsFor(facts, -wasteOf(facts))),
};

const PACKS: CommonMistakes<OrderFacts> = {
  "left out the waste": (facts) => Math.ceil(panelsFor(facts, 0) / facts.perPack),
  "subtracted the waste": (facts) => Math.ceil(panelsFor(facts, -wasteOf(facts)) / facts.perPack),
  "gave panels, not packs": (facts) => Math.ceil(panelsFor(facts, wasteOf(facts))),
};

export const orderTopic = {
  id: "order",
  title: "Ordering",
  reteachTip:
    "Compare the cost of one pack short with one pack extra: add waste first, then round up to whole packs.",
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
    text:
      measuring.units === "metric"
        ? "Shingles are ordered by roof area, plus waste. Find the area to order, the number of panels, and the number of whole packs."
        : "Shingles are ordered by roof area, plus waste. A square is 100 sq ft. Find the squares to order, the number of panels, and the number of whole packs.",
    givens: [
      { label: "Area on the slope", text: writeArea(areaSqFt, measuring) },
      { label: "Waste", text: `${wastePercent} %` },
      {
        label: "Panel exposure",
        text: `${measuring.writeSmall(exposedWidthIn)} × ${measuring.writeSmall(exposedHeightIn)}`,
      },
      { label: "Panels per pack", text: String(perPack) },
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
    const panelWords = `Panel exposure: ${writeSmall(exposedWidthIn)} × ${writeSmall(exposedHeightIn)} = `;
    const divided = isMetric
      ? `${panelShown} m²; ${orderShown} ÷ ${panelShown}`
      : `${panelSqIn(facts)} sq in, about ${panelShown} sq ft; ${orderShown} × ${SQ_INCHES_PER_SQ_FOOT} ÷ ${panelSqIn(facts)}`;
    const toOrder = isMetric
      ? areaAnswer("Area to order", toOrderSqFt, measuring, mistakesOf(AREA, facts))
      : numberAnswer(
          "Squares to order",
          squares(areaSqFt, wasteOf(facts)),
          2,
          mistakesOf(AREA, facts).map(({ name, value }) => ({ name, value: value / SQ_FT_PER_SQUARE })),
          {
            unit: "squares",
            tolerance: SQUARES_TOLERANCE,
            why: `${SQUARES_TOLERANCE}: the last decimal place`,
          },
        );
    // Someone may continue with both areas as rounded.
    const panelsFromRounded =
      (parseFloat(toOrder.shown) * (isMetric ? 1 : SQ_FT_PER_SQUARE)) / Number(panelShown);
    return {
      answers: [
        toOrder,
        countAnswer("Panels", "panels", quantity, mistakesOf(PANELS, facts), panelsFromRounded),
        countAnswer("Packs", "packs", ofPacks, mistakesOf(PACKS, facts)),
      ],
      steps: [
        isMetric
          ? step(
              `${areaWords}; rounded: ${writeArea(toOrderSqFt, measuring)}.`,
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
} as const satisfies Topic<OrderFacts>;
