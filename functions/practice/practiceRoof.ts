import type { Cell } from "../../shared/cell";
import { describeCell } from "../../shared/describe";
import { InputError } from "../../shared/inputError";
import type { CellKind } from "../../shared/kinds/kind";
import { choice } from "../../shared/kinds/choice";
import { PANEL_FIELDS } from "../../shared/kinds/panel";
import { TEXT_RESULT } from "../../shared/result";
import { defineTable, optional, required } from "../../shared/spec/spec";
import { LEVELS, type Level } from "./level";
import { measuringOf, UNITS, type Measuring, type Units } from "./measuring";
import { randomOf, type Random } from "./random";

/** A gable roof to practice on: everything to measure or to read in the manufacturer's guide. Lengths in inches. */
export interface PracticeRoof {
  readonly buildingLengthIn: number;
  readonly buildingWidthIn: number;
  readonly rise: number;
  /** At the eaves and gables, measured level. */
  readonly overhangIn: number;
  readonly exposedWidthIn: number;
  readonly exposedHeightIn: number;
  readonly gableSetbackIn: number;
  readonly gableFoldIn: number;
  readonly trimStockIn: number;
  readonly trimLapIn: number;
  readonly clipSpacingIn: number;
}

/** The shingle and trim of a practice problem: made-up but usual sizes for both tapes. */
export const drawShingle = (
  random: Random,
  { pickIn }: Measuring,
): Omit<PracticeRoof, "buildingLengthIn" | "buildingWidthIn" | "rise" | "overhangIn"> => ({
  exposedWidthIn: pickIn(random, [24, 20, 16], [600, 500, 400]),
  exposedHeightIn: pickIn(random, [12, 10, 9], [300, 250, 225]),
  gableSetbackIn: pickIn(random, [1, 1.5], [25, 40]),
  gableFoldIn: pickIn(random, [2, 2.5, 3], [50, 60, 75]),
  trimStockIn: pickIn(random, [120, 144], [3000, 3500]),
  trimLapIn: pickIn(random, [2, 3, 4], [50, 75, 100]),
  clipSpacingIn: pickIn(random, [12, 10, 16], [300, 250, 400]),
});

export const drawRoof = (random: Random, measuring: Measuring): PracticeRoof => ({
  buildingLengthIn: measuring.drawLengthIn(random, 24, 60),
  buildingWidthIn: measuring.drawLengthIn(random, 16, 36),
  rise: measuring.drawRise(random),
  overhangIn: measuring.pickIn(random, [12, 16, 18, 24], [300, 400, 450, 600]),
  ...drawShingle(random, measuring),
});

/** The roof of a seed as labels and values. The shingle has the labels of the Panel sheet, so functions read the block as a panel. */
const practiceRoof = (seed: string, level: Level, units: Units): Cell[][] => {
  const measuring = measuringOf(units, level);
  const { write, writeSmall, writePitch } = measuring;
  const roof = drawRoof(randomOf(`${seed}/${level}/${units}`), measuring);
  return [
    ["building length", write(roof.buildingLengthIn)],
    ["building width", write(roof.buildingWidthIn)],
    ["pitch", writePitch(roof.rise)],
    ["overhang", writeSmall(roof.overhangIn)],
    [PANEL_FIELDS.exposedWidthIn.label, writeSmall(roof.exposedWidthIn)],
    [PANEL_FIELDS.exposedHeightIn.label, writeSmall(roof.exposedHeightIn)],
    [PANEL_FIELDS.gableSetbackIn.label, writeSmall(roof.gableSetbackIn)],
    [PANEL_FIELDS.gableFoldIn.label, writeSmall(roof.gableFoldIn)],
    [PANEL_FIELDS.trimStockIn.label, writeSmall(roof.trimStockIn)],
    [PANEL_FIELDS.trimLapIn.label, writeSmall(roof.trimLapIn)],
    [PANEL_FIELDS.trimClipSpacingIn.label, writeSmall(roof.clipSpacingIn)],
  ];
};

const LONGEST_SEED = 64;

/** A number or a word. The same seed gives the same roof. */
const seed: CellKind<string> = {
  shape: "cell",
  takes: "a number or a word",
  read: (cell, label) => {
    const text = String(cell).trim();
    if (text.length > LONGEST_SEED)
      throw new InputError(`${label} takes at most ${LONGEST_SEED} characters, got ${describeCell(cell)}`);
    return text;
  },
};

export const practiceRoofSpec = defineTable({
  id: "PRACTICEROOF",
  concept: "practice",
  summary: "A gable roof to practice on, made up from a seed: the same seed gives the same roof.",
  parameters: [
    required("seed", seed, "Any number or word."),
    optional("level", choice(LEVELS), "How fine the measurements are.", "half day"),
    optional("units", choice(UNITS), "Units of the tape.", "feet and inches"),
  ],
  columns: [
    { heading: "label", result: TEXT_RESULT },
    { heading: "value", result: TEXT_RESULT },
  ],
  formula:
    "each value is drawn in turn: lengths on marks of the level (1 in, 1/4 in, 1/16 in; 50, 5, 1 mm), all others from usual values",
  source: "made up; draws by FNV-1a of the seed and Mulberry32",
  examples: [
    {
      args: [7, "first hour"],
      result: [
        ["label", "value"],
        ["building length", `57' 2"`],
        ["building width", `30' 3"`],
        ["pitch", "9 in 12"],
        ["overhang", `12"`],
        ["exposed width", `20"`],
        ["exposed height", `10"`],
        ["gable setback", `1"`],
        ["gable fold", `2 1/2"`],
        ["trim stock length", `120"`],
        ["trim lap", `3"`],
        ["trim clip spacing", `16"`],
      ],
      from: "the same draws, by an independent program in another language",
    },
  ],
  calculate: practiceRoof,
});
