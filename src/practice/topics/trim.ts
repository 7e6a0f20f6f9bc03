import { feetSpec } from "../../../functions/measure/feet";
import { trimFeet, trimFeetSpec } from "../../../functions/trim/trimFeet";
import { piecesForRun } from "../../../functions/trim/cutting/piecesForRun";
import { trimPiecesSpec } from "../../../functions/trim/trimPieces";
import { feetToInches, inchesToFeet } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { countAnswer } from "../answers/count";
import { lengthAnswer } from "../answers/length";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { runFigure } from "../figures/runFigure";
import type { Topic } from "../topic";
import { lengthStep, plain, quoted, step } from "../steps";

export type TrimFacts = { readonly runIn: number; readonly stockIn: number; readonly lapIn: number };

const piecesOf = ({ runIn, stockIn, lapIn }: TrimFacts): number =>
  piecesForRun(inchesToFeet(runIn), stockIn, lapIn);
const lastOf = (facts: TrimFacts): number =>
  facts.runIn - (piecesOf(facts) - 1) * (facts.stockIn - facts.lapIn);

const PIECES: CommonMistakes<TrimFacts> = {
  "left out the laps": ({ runIn, stockIn }) => Math.ceil(runIn / stockIn),
};

const LAST: CommonMistakes<TrimFacts> = {
  "left out the laps": ({ runIn, stockIn }) => runIn - (Math.ceil(runIn / stockIn) - 1) * stockIn,
  "left the lap off the last piece": (facts) => lastOf(facts) - facts.lapIn,
  "counted one lap too many": (facts) => lastOf(facts) + facts.lapIn,
};

const USED: CommonMistakes<TrimFacts> = {
  "left out the laps": ({ runIn }) => runIn,
  "added a lap for each piece": (facts) => facts.runIn + piecesOf(facts) * facts.lapIn,
  "used whole stock lengths": (facts) => piecesOf(facts) * facts.stockIn,
};

export const trimTopic = {
  id: "trim",
  title: "Trim cuts",
  reteachTip:
    "Lap two strips of card stock: each piece after the first covers the stock length minus one lap.",
  draw: (random, { measuring }) => ({
    runIn: measuring.drawLengthIn(random, 22, 58),
    stockIn: measuring.pickIn(random, [120, 144], [3000, 3500]),
    lapIn: measuring.pickIn(random, [2, 3, 4], [50, 75, 100]),
  }),
  ask: ({ runIn, stockIn, lapIn }, { level, measuring }) => ({
    text:
      "A run of trim is laid in stock lengths, each lapped over the one before; only the last piece is cut. Find how many pieces the run takes, and the length of the last piece with its lap." +
      (level === "first hour"
        ? ""
        : " Also find the trim used, with laps but without the cutoff of the last piece."),
    givens: [
      { label: "Run", text: measuring.write(runIn) },
      { label: "Stock length", text: measuring.write(stockIn) },
      { label: "Lap", text: measuring.writeSmall(lapIn) },
    ],
    figure: runFigure(runIn, stockIn, { run: measuring.write(runIn), piece: measuring.write(stockIn) }),
  }),
  solve: (facts, { level, measuring }) => {
    const { runIn, stockIn, lapIn } = facts;
    const { write, writeSmall } = measuring;
    const quantity = (runIn - lapIn) / (stockIn - lapIn);
    const [pieces, lastIn] = [piecesOf(facts), lastOf(facts)];
    const usedIn = feetToInches(trimFeet([inchesToFeet(runIn)], lapIn, stockIn));
    const [run, stock, lap] = [quoted(write(runIn)), quoted(write(stockIn)), quoted(writeSmall(lapIn))];
    const feet = (text: string): string => call(feetSpec, text);
    const count = call(trimPiecesSpec, run, stock, lap);
    return {
      answers: [
        countAnswer("Pieces", "pieces", quantity, mistakesOf(PIECES, facts)),
        lengthAnswer("Last piece with its lap", lastIn, measuring, mistakesOf(LAST, facts)),
        ...(level === "first hour"
          ? []
          : [lengthAnswer("Trim used, with laps", usedIn, measuring, mistakesOf(USED, facts))]),
      ],
      steps: [
        step(
          `The first piece covers ${write(stockIn)}, each one after it ${write(stockIn - lapIn)}: (${write(runIn)} − ${writeSmall(lapIn)}) ÷ ${write(stockIn - lapIn)} = ${plain(quantity, 2)}: ${pieces} pieces.`,
          count,
          pieces,
        ),
        lengthStep(
          `${pieces - 1} × ${write(stockIn - lapIn)} = ${write((pieces - 1) * (stockIn - lapIn))}; ${write(runIn)} − ${write((pieces - 1) * (stockIn - lapIn))} = ${write(lastIn)}.`,
          `${feet(run)}-(${count}-1)*(${feet(stock)}-${feet(lap)})`,
          lastIn,
          measuring,
        ),
        ...(level === "first hour"
          ? []
          : [
              lengthStep(
                `${write(runIn)} + ${pieces - 1} laps of ${writeSmall(lapIn)} = ${write(usedIn)}.`,
                call(trimFeetSpec, run, lap, stock),
                usedIn,
                measuring,
              ),
            ]),
      ],
    };
  },
} as const satisfies Topic<TrimFacts>;
