import type { Cell, Matrix } from "../../../shared/cell";
import { CellError } from "../../../shared/cell";
import { PANEL_FIELDS } from "../../../shared/kinds/panel";
import { panelBlock } from "../../../shared/kinds/panelBlock";
import { call, callForSentence } from "../../support/call";

const PANEL: Matrix = [
  ["Exposed Width", "2 ft"],
  ["exposed height", 12],
  ["stagger pattern", "1, 1/2"],
  ["no-bend bands", "5-6, 11-12"],
  ["trim lap", -1],
  ["gable fold", " "],
  ["panel price", "$1,234.50"],
];

describe("one value of the panel", () => {
  it.each<[string, Cell]>([
    ["exposed width", 24],
    [" EXPOSED  HEIGHT ", 12],
    ["stagger pattern", "1, 1/2"],
    ["no-bend bands", "5-6, 11-12"],
    ["gable fold", 0],
    ["minimum pitch", 3],
    ["panel price", 1234.5],
  ])("%j is %j, even if another field is wrong", (label, value) => {
    expect(call("PANELVALUE", PANEL, label)).toBe(value);
  });

  it("uses the default of a text field", () => {
    expect(call("PANELVALUE", [["exposed width", 24]], "stagger pattern")).toBe("1, 1/2, 3/4, 1/4");
    expect(call("PANELVALUE", [["exposed width", 24]], "no-bend bands")).toBe("none");
  });

  it("is text, even for a pattern that is a single number", () => {
    expect(call("PANELVALUE", [["stagger pattern", 0.5]], "stagger pattern")).toBe("0.5");
  });

  it.each<[Matrix, Cell, string]>([
    [PANEL, "trim lap", 'panel "trim lap" must be at least 0 in, got -1'],
    [
      [["exposed width", 24]],
      "exposed height",
      'panel "exposed height" is missing: it takes a length in inches',
    ],
    [[["stagger pattern", "1, 2"]], "stagger pattern", 'panel "stagger pattern" must be at most 1, got " 2"'],
    [[["stagger pattern", ","]], "stagger pattern", 'panel "stagger pattern" has no steps'],
    [[["no-bend bands", "6-5"]], "no-bend bands", 'panel "no-bend bands" must run from less to more'],
    [PANEL, "color", "label takes one of exposed width, exposed height, "],
    [PANEL, 5, "label takes one of exposed width"],
    [PANEL, null, "label is missing"],
    [[["exposed width"]], "exposed width", "panel takes the panel sheet's block: two columns"],
  ])("%j, %j is rejected", (panel, label, sentence) => {
    expect(callForSentence("PANELVALUE", panel, label)).toContain(`#VALUE! ${sentence}`);
  });

  it("returns a column for a column of labels", () => {
    expect(call("PANELVALUE", PANEL, [["exposed width"], ["exposed height"]])).toEqual([[24], [12]]);
  });

  it("passes on an error value anywhere in the block", () => {
    const error = new CellError("#REF!", "");
    expect(call("PANELVALUE", [...PANEL, ["trim stock length", error]], "exposed width")).toBe(error);
  });

  it("equals the value read from the whole block, for every numeric field", () => {
    const sound = PANEL.filter(([label]) => label !== "trim lap");
    const panel = panelBlock.read(sound, "panel");
    const keys = Object.keys(PANEL_FIELDS) as (keyof typeof PANEL_FIELDS)[];
    const numbers = keys.filter((key) => typeof panel[key] === "number");
    expect(numbers).toHaveLength(keys.length - 3);
    for (const key of numbers) expect(call("PANELVALUE", sound, PANEL_FIELDS[key].label)).toBe(panel[key]);
  });
});
