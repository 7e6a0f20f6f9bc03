import { nailPoundsSpec } from "../../../functions/trim/nailPounds";
import { sheetPrefix } from "../../workbook/address";
import { call, isEmpty } from "../../workbook/formula";
import { panelFieldName } from "../panelSheet";
import { panelsLaidCell } from "../takeoff/courseSection";
import { deckCell } from "../takeoff/deckCells";
import type { TakeoffLayout } from "../takeoff/takeoffLayout";
import { trimSetting } from "../takeoff/trimSection";
import { absoluteTrimColumn, trimCell } from "../takeoff/trimTable";
import { rowsFrom } from "../takeoff/sectionHead";
import { TRIM_ROWS, USUAL_TRIMS } from "../takeoff/trimsSheet";

/** The cell that says what another line comes to, waste in. */
export type WithWaste = (item: string) => string;

/** What a line of the order says, before the figures that a person types. */
export interface OrderLine {
  /** What the line is known by. */
  readonly item: string;
  /** A formula without "=" that shows the item; undefined where the item itself stands there. */
  readonly shownItem?: string;
  readonly unit: string;
  /** A formula without "=" that leads back to the takeoff, or to another line. */
  readonly needed: (withWaste: WithWaste) => string;
  /** A formula without "=", or a number that a person may change. */
  readonly perPack: string | number;
  readonly orderUnit: string;
  /** Formulas without "="; left out where a person types the supplier's figure. */
  readonly weightEach?: string;
  readonly price?: string;
}

export interface OrderGroup {
  readonly title: string;
  readonly lines: readonly OrderLine[];
}

const line = (
  item: string,
  unit: string,
  needed: OrderLine["needed"],
  differing: Partial<OrderLine> = {},
): OrderLine => ({ item, unit, needed, perPack: 1, orderUnit: unit, ...differing });

/** So many for each panel, waste in; nothing where the panel sheet asks for none. */
const forEachPanel =
  (perPanel: string): OrderLine["needed"] =>
  (withWaste) =>
    `IF(OR(${perPanel}=0,${isEmpty(withWaste(PANELS))}),"",${withWaste(PANELS)}*${perPanel})`;

/** Zero is not known: a weight that isn't there is better than one that is wrong. */
const ifKnown = (value: string, then = value): string => `IF(${value}=0,"",${then})`;

const BOX = { perPack: 100, orderUnit: "boxes" };

export const PANELS = "panels";
const [PANEL_CLIPS, TRIM_CLIPS] = ["panel clips", "trim clips"];

/** The order, grouped as a supplier keeps it; every quantity leads back to the takeoff. */
export const orderGroups = (layout: TakeoffLayout, takeoffSheet: string): readonly OrderGroup[] => {
  const there = sheetPrefix(takeoffSheet);
  const panelsPerPack = panelFieldName("panelsPerPack");
  const nailsPerPound = panelFieldName("nailsPerPound");
  const sumOf = (column: "clips" | "nails"): string => `SUM(${there}${absoluteTrimColumn(layout, column)})`;
  const trimLine = (index: number): OrderLine => {
    const cell = (column: "label" | "stocks" | "weightEach"): string =>
      `${there}${trimCell(layout.trim + index, column)}`;
    const perPack = trimSetting(index, "perPack");
    return line(USUAL_TRIMS[index]?.label ?? "", "pieces", () => cell("stocks"), {
      shownItem: cell("label"),
      // From the table of trims, so that they stay with their trim where its rows are sorted.
      perPack: `IF(${isEmpty(cell("label"))},"",IF(${isEmpty(perPack)},1,${perPack}))`,
      orderUnit: "packs",
      weightEach: cell("weightEach"),
      price: trimSetting(index, "price"),
    });
  };
  return [
    {
      // No two cells of the column of items read alike, letter case aside: change orders find a line by its item.
      title: "Panels and backers",
      lines: [
        line(PANELS, "panels", () => ifKnown(`${there}${panelsLaidCell(layout)}`), {
          perPack: panelsPerPack,
          orderUnit: "packs",
          weightEach: ifKnown(panelFieldName("panelWeightLb")),
          price: ifKnown(panelFieldName("panelPrice"), `${panelFieldName("panelPrice")}*${panelsPerPack}`),
        }),
        line("foam backers", "backers", forEachPanel(panelFieldName("foamBackersPerPanel")), {
          orderUnit: "packs",
        }),
      ],
    },
    { title: "Trim", lines: rowsFrom(0, TRIM_ROWS).map(trimLine) },
    {
      title: "Fasteners",
      lines: [
        line(PANEL_CLIPS, "clips", forEachPanel(panelFieldName("clipsPerPanel")), BOX),
        line(TRIM_CLIPS, "clips", () => sumOf("clips"), BOX),
        line(
          "nails",
          "nails",
          (withWaste) =>
            `${sumOf("nails")}+${panelFieldName("nailsPerClip")}*(N(${withWaste(PANEL_CLIPS)})+N(${withWaste(TRIM_CLIPS)}))`,
          { ...BOX, weightEach: ifKnown(nailsPerPound, call(nailPoundsSpec, "1", nailsPerPound)) },
        ),
      ],
    },
    {
      title: "Deck",
      lines: [
        line("underlayment", "rolls", () => `${there}${deckCell(layout, "underlayment")}`),
        line("ice barrier", "rolls", () => `${there}${deckCell(layout, "iceRolls")}`),
      ],
    },
  ];
};
