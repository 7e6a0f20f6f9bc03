import { fieldSheetPlan } from "../../src/sheets/fieldSheet/fieldSheet";
import { panelSheet } from "../../src/sheets/panelSheet";
import { number, text, type WorkbookPlan } from "../../src/sheets/plan";
import { DEMO_TAKE_OFF, FOOTPRINT_DEMO } from "../../src/sheets/takeOff/demo";
import { takeOffPlan, USUAL_NAMES } from "../../src/sheets/takeOff/takeOff";

const PANEL = panelSheet("Panel", {
  exposedWidthIn: 24,
  exposedHeightIn: 12,
  gableSetbackIn: 1.5,
  gableFoldIn: 2.5,
});

/** Every template, filled in the ways that differ. */
export const TEMPLATES: Readonly<Record<string, WorkbookPlan>> = {
  "the take-off": takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES),
  "the take-off from a footprint": takeOffPlan(FOOTPRINT_DEMO, USUAL_NAMES),
  "an empty take-off for a job that reads like a formula": takeOffPlan(
    { ...DEMO_TAKE_OFF, job: "=1+1", planes: [], runs: [] },
    USUAL_NAMES,
  ),
  "the field sheet": {
    sheets: [
      fieldSheetPlan({
        sheetName: "Field North",
        inputs: {
          plane: text("North"),
          shape: text("rectangle"),
          eave: number(30),
          slopeLength: text("20 ft"),
        },
        courses: 20,
      }),
      PANEL.sheet,
    ],
    names: PANEL.names,
  },
};
