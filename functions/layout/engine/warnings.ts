import { writeInches } from "../../../shared/lengthText";
import type { Side } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { lengthOf, type CutPiece } from "./piece";
import type { CourseStrip } from "./courseStrips";
import { isVertical, type Flank } from "./trapezoid";
import { HAIR_IN } from "./precision";

/** Something to warn the crew about, with the length in question and the limits it breaks. */
interface Warning {
  readonly about: "short" | "wide" | "bent" | "cut" | "thin" | "bare";
  readonly lengthIn: number;
  readonly limitsIn: readonly number[];
}

const inches = (lengthIn: number): string => writeInches(lengthIn, 16);

const WORDS: Readonly<Record<Warning["about"], (lengthIn: string, limitsIn: string) => string>> = {
  short: (length, shortest) => `covers ${length} in, under the shortest piece of ${shortest} in`,
  wide: (length, most) => `needs a blank of ${length} in, more than the ${most} in that a panel gives`,
  bent: (length, band) => `is bent ${length} in from its left lock, in the no-bend band ${band} in`,
  cut: (length, band) => `is cut ${length} in from its left lock, in the no-bend band ${band} in`,
  thin: (length, shortest) => `shows ${length} in, under the shortest piece of ${shortest} in`,
  bare: (length, setback) =>
    `is ${length} in wide, of which setbacks of ${setback} in leave nothing to cover`,
};

/** The warning as the end of a sentence: "covers 1 1/2 in, under ...". */
export const warningText = ({ about, lengthIn, limitsIn }: Warning): string =>
  WORDS[about](inches(lengthIn), limitsIn.map(inches).join("-"));

/** At each end that keeps no lock, the lock of the panel may be opened flat. */
const openedLocks = { near: 1, far: 1, neither: 2, both: 0 } as const;

const sizeWarnings = (piece: CutPiece, panel: LaidPanel): Warning[] => {
  const [coverIn, blankIn] = [lengthOf(piece.cover), lengthOf(piece.blank)];
  const mostIn = panel.exposedWidthIn + openedLocks[piece.keeps] * panel.lockFlangeGainIn;
  const warnings: Warning[] = [];
  if (panel.shortestPieceIn - coverIn > HAIR_IN)
    warnings.push({ about: "short", lengthIn: coverIn, limitsIn: [panel.shortestPieceIn] });
  if (blankIn - mostIn > HAIR_IN) warnings.push({ about: "wide", lengthIn: blankIn, limitsIn: [mostIn] });
  return warnings;
};

interface Line {
  readonly about: "bent" | "cut";
  readonly alongIn: number;
}

/** Square bends and cuts. A slanted cut crosses the stamping in any case, so it gives no warning. */
const linesAt = (flank: Flank, outward: 1 | -1, foldIn: number): Line[] => {
  if (!isVertical(flank) || (flank.kind !== "gable" && flank.kind !== "opening")) return [];
  const edgeIn = flank.atLowIn;
  if (flank.kind === "opening" || foldIn === 0) return [{ about: "cut", alongIn: edgeIn }];
  return [
    { about: "bent", alongIn: edgeIn },
    { about: "cut", alongIn: edgeIn + outward * foldIn },
  ];
};

/** A bend exactly on the edge of a band is allowed. */
const bandWarnings = (piece: CutPiece, panel: LaidPanel, side: Side): Warning[] => {
  if (panel.noBendBands.length === 0) return [];
  const { fromIn, toIn } = piece.panelPlace;
  const lines = piece.shapes.flatMap(({ near, far }) => [
    ...linesAt(near, -1, panel.gableFoldIn),
    ...linesAt(far, 1, panel.gableFoldIn),
  ]);
  const distinct = [...new Map(lines.map((line) => [`${line.about} ${line.alongIn}`, line])).values()];
  return distinct.flatMap(({ about, alongIn }) => {
    const lengthIn = side === "left" ? alongIn - fromIn : toIn - alongIn;
    return panel.noBendBands
      .filter((band) => lengthIn - band.fromIn > HAIR_IN && band.toIn - lengthIn > HAIR_IN)
      .map((band) => ({ about, lengthIn, limitsIn: [band.fromIn, band.toIn] }));
  });
};

/** The warnings for a piece. The left lock of the panel is the near one where courses start at the left. */
export const pieceWarnings = (piece: CutPiece, panel: LaidPanel, side: Side): Warning[] => [
  ...sizeWarnings(piece, panel),
  ...bandWarnings(piece, panel, side),
];

/** The warnings for a whole course: the top one may show too little, and a narrow one may be left bare. */
export const courseWarnings = ({ lowIn, highIn, bareWidthIn }: CourseStrip, panel: LaidPanel): Warning[] => {
  const lengthIn = highIn - lowIn;
  const isThin = panel.exposedHeightIn - lengthIn > HAIR_IN && panel.shortestPieceIn - lengthIn > HAIR_IN;
  return [
    ...(isThin ? [{ about: "thin", lengthIn, limitsIn: [panel.shortestPieceIn] } as const] : []),
    ...(bareWidthIn > 0
      ? [{ about: "bare", lengthIn: bareWidthIn, limitsIn: [panel.gableSetbackIn] } as const]
      : []),
  ];
};
