import { choice } from "../../shared/kinds/choice";
import { panelRows, readPanelField, type PanelRows } from "../../shared/kinds/panelBlock";
import { PANEL_FIELDS } from "../../shared/kinds/panel";
import { VALUE_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";

const FIELDS = Object.values(PANEL_FIELDS);

/** One value of the panel's block, checked; no other field is read. What is no number stays as it was typed. */
export const panelValue = (rows: PanelRows, label: string): number | string => {
  const field = FIELDS.find((each) => each.label === label) as (typeof FIELDS)[number];
  const { cell, value } = readPanelField(field, rows, "panel");
  return typeof value === "number" ? value : String(cell);
};

export const panelValueSpec = defineFunction({
  id: "PANELVALUE",
  concept: "panel",
  summary: "One value of the panel sheet's block, checked: lengths in inches, the default where it is blank.",
  parameters: [
    required("panel", panelRows, "The panel sheet's block: two columns, label and value."),
    required(
      "label",
      choice(FIELDS.map((field) => field.label)),
      "The value's label, such as exposed width.",
    ),
  ],
  heading: "Panel value",
  result: VALUE_RESULT,
  formula: "the value beside the label, or the label's default where it is blank",
  source: "The panel's own sheet, filled in from its maker's installation guide",
  examples: [
    { args: [[["exposed width", "2 ft"]], "exposed width"], result: 24, from: "2 ft × 12" },
    { args: [[["exposed width", 24]], "trim clip spacing"], result: 12, from: "the label's default" },
    {
      args: [[["stagger pattern", "1, 1/2"]], "Stagger Pattern"],
      result: "1, 1/2",
      from: "text stays as it was typed",
    },
  ],
  calculate: panelValue,
});
