import { choice } from "../../shared/kinds/choice";
import { panelRows, readPanelField, type PanelRows } from "../../shared/kinds/panelBlock";
import { PANEL_FIELDS } from "../../shared/kinds/panel";
import { VALUE_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";

const FIELDS = Object.values(PANEL_FIELDS);

/** One value from the panel block, checked. No other field is read. A value that isn't a number stays as typed. */
export const panelValue = (rows: PanelRows, label: string): number | string => {
  const field = FIELDS.find((each) => each.label === label) as (typeof FIELDS)[number];
  const { cell, value } = readPanelField(field, rows, "panel");
  return typeof value === "number" ? value : String(cell);
};

export const panelValueSpec = defineFunction({
  id: "PANELVALUE",
  concept: "panel",
  summary: "One value from the panel block, checked. Lengths are in inches; a blank value gives the default.",
  parameters: [
    required("panel", panelRows, "The block on the Panel sheet: two columns, label and value."),
    required(
      "label",
      choice(FIELDS.map((field) => field.label)),
      "Label of the value, such as exposed width.",
    ),
  ],
  heading: "Panel value",
  result: VALUE_RESULT,
  formula: "the value next to the label, or the default for that label if the value is blank",
  source: "the Panel sheet, filled in from the manufacturer's installation guide",
  examples: [
    { args: [[["exposed width", "2 ft"]], "exposed width"], result: 24, from: "2 ft × 12" },
    { args: [[["exposed width", 24]], "trim clip spacing"], result: 12, from: "the label's default" },
    {
      args: [[["stagger pattern", "1, 1/2"]], "Stagger Pattern"],
      result: "1, 1/2",
      from: "text stays as typed",
    },
  ],
  calculate: panelValue,
});
