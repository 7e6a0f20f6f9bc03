import { clipCount, clipCountSpec } from "../../../functions/trim/clipCount";
import { nailCount, nailCountSpec } from "../../../functions/trim/nailCount";
import { inchesToFeet } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { distanceToWhole, mistakesOf, wholeAnswer, type Slips } from "../answers";
import { runFigure } from "../figures/runFigure";
import type { Answer, Topic } from "../problem";
import { plain, quoted, step } from "../steps";

/** `rows` of nails; 0: nails aren't asked for. */
export type FastenerFacts = { readonly runIn: number; readonly spacingIn: number; readonly rows: number };

const spacesOf = ({ runIn, spacingIn }: FastenerFacts): number => Math.ceil(runIn / spacingIn);

const CLIPS: Slips<FastenerFacts> = {
  "counted spaces for clips": spacesOf,
  "left out both ends": (facts) => spacesOf(facts) - 1,
};

/** With a tape in feet and inches. */
const CLIPS_IN_INCHES: Slips<FastenerFacts> = {
  ...CLIPS,
  "took feet for inches": ({ runIn, spacingIn }) => Math.ceil(inchesToFeet(runIn) / spacingIn) + 1,
};

const NAILS: Slips<FastenerFacts> = {
  "counted spaces for nails": (facts) => facts.rows * spacesOf(facts),
  "took one row only": (facts) => spacesOf(facts) + 1,
};

const ENDS = 2;

export const fastenersTopic: Topic<FastenerFacts> = {
  id: "fasteners",
  teachAgain:
    "Count the posts of a fence and the gaps between them: there is one post more, and no gap may be wider than the spacing.",
  draw: (random, { level, measuring }) => ({
    runIn: measuring.drawLengthIn(random, 14, 48),
    spacingIn: measuring.pickIn(random, [12, 10, 16], [300, 250, 400]),
    rows: level === "first hour" ? 0 : random.whole(2, 3),
  }),
  ask: ({ runIn, spacingIn, rows }, { measuring }) => ({
    words:
      "Clips stand along a run of trim at no more than the spacing, one at each end. Find how many clips the run takes." +
      (rows === 0
        ? ""
        : ` Find also the nails for ${rows} rows side by side on the same spacing, both ends nailed.`),
    givens: [
      { label: "Run", text: measuring.write(runIn) },
      { label: "Spacing on center, at most", text: measuring.writeSmall(spacingIn) },
    ],
    figure: runFigure(runIn, spacingIn, {
      run: measuring.write(runIn),
      piece: measuring.writeSmall(spacingIn),
    }),
  }),
  solve: (facts, { measuring }) => {
    const { runIn, spacingIn, rows } = facts;
    const { write, writeSmall } = measuring;
    const quantity = runIn / spacingIn;
    const spaces = spacesOf(facts);
    const clips = clipCount(inchesToFeet(runIn), spacingIn, ENDS);
    const nails = rows === 0 ? 0 : nailCount(inchesToFeet(runIn), spacingIn, rows);
    const args = [quoted(write(runIn)), quoted(writeSmall(spacingIn))];
    // Who rounds the spaces down comes to as many as who counts spaces for clips.
    const leeway = distanceToWhole(quantity);
    const clipSlips = mistakesOf(measuring.units === "metric" ? CLIPS : CLIPS_IN_INCHES, facts);
    const count: Answer = { ...wholeAnswer("Clips", "clips", clips, clipSlips), leeway };
    const nailAnswer: Answer = {
      ...wholeAnswer(`Nails in ${rows} rows`, "nails", nails, mistakesOf(NAILS, facts)),
      leeway,
    };
    return {
      answers: rows === 0 ? [count] : [count, nailAnswer],
      steps: [
        step(
          `${write(runIn)} ÷ ${writeSmall(spacingIn)} = ${plain(quantity, 2)}: ${spaces} spaces, and one clip more: ${clips} clips.`,
          call(clipCountSpec, ...args),
          clips,
        ),
        ...(rows === 0
          ? []
          : [
              step(
                `${rows} × (${spaces} + 1) = ${nails} nails.`,
                call(nailCountSpec, ...args, String(rows)),
                nails,
              ),
            ]),
      ],
    };
  },
};
