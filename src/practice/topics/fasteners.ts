import { clipCount, clipCountSpec } from "../../../functions/trim/clipCount";
import { nailCount, nailCountSpec } from "../../../functions/trim/nailCount";
import { inchesToFeet } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { distanceToWhole, wholeAnswer } from "../answers/count";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { runFigure } from "../figures/runFigure";
import type { Answer, Topic } from "../topic";
import { plain, quoted, step } from "../steps";

/** `rows` of nails; 0 if nails aren't asked for. */
export type FastenerFacts = { readonly runIn: number; readonly spacingIn: number; readonly rows: number };

const spacesOf = ({ runIn, spacingIn }: FastenerFacts): number => Math.ceil(runIn / spacingIn);

const CLIPS: CommonMistakes<FastenerFacts> = {
  "counted spaces, not clips": spacesOf,
  "left out both ends": (facts) => spacesOf(facts) - 1,
};

/** Only in feet and inches. */
const CLIPS_IN_INCHES: CommonMistakes<FastenerFacts> = {
  ...CLIPS,
  "used feet for inches": ({ runIn, spacingIn }) => Math.ceil(inchesToFeet(runIn) / spacingIn) + 1,
};

const NAILS: CommonMistakes<FastenerFacts> = {
  "counted spaces, not nails": (facts) => facts.rows * spacesOf(facts),
  "counted only one row": (facts) => spacesOf(facts) + 1,
};

const ENDS = 2;

export const fastenersTopic = {
  id: "fasteners",
  title: "Clips and nails",
  reteachTip:
    "Count the posts of a fence and the gaps between them: there is one more post than gaps, and no gap may exceed the spacing.",
  draw: (random, { level, measuring }) => ({
    runIn: measuring.drawLengthIn(random, 14, 48),
    spacingIn: measuring.pickIn(random, [12, 10, 16], [300, 250, 400]),
    rows: level === "first hour" ? 0 : random.whole(2, 3),
  }),
  ask: ({ runIn, spacingIn, rows }, { measuring }) => ({
    text:
      "Clips hold a run of trim: one at each end, and no two farther apart than the spacing. Find how many clips the run takes." +
      (rows === 0
        ? ""
        : ` Also find the nails for ${rows} rows at the same spacing, with a nail at both ends of each row.`),
    givens: [
      { label: "Run", text: measuring.write(runIn) },
      { label: "Maximum spacing on center", text: measuring.writeSmall(spacingIn) },
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
    // Rounding the spaces down gives the same count as counting spaces, so it isn't a mistake of its own.
    const roundingMargin = distanceToWhole(quantity);
    const clipMistakes = mistakesOf(measuring.units === "metric" ? CLIPS : CLIPS_IN_INCHES, facts);
    const count: Answer = { ...wholeAnswer("Clips", "clips", clips, clipMistakes), roundingMargin };
    const nailAnswer: Answer = {
      ...wholeAnswer(`Nails in ${rows} rows`, "nails", nails, mistakesOf(NAILS, facts)),
      roundingMargin,
    };
    return {
      answers: rows === 0 ? [count] : [count, nailAnswer],
      steps: [
        step(
          `${write(runIn)} ÷ ${writeSmall(spacingIn)} = ${plain(quantity, 2)}: ${spaces} spaces, plus one: ${clips} clips.`,
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
} as const satisfies Topic<FastenerFacts>;
