import type { LaidPanel } from "../../../shared/kinds/panel";
import type { Span } from "./courseStrips";
import { farthestIn, nearestIn, type EndKind, type Flank, type Trapezoid } from "./trapezoid";
import { tidy } from "./precision";

/** The side locks of the panel that a piece keeps, as seen from the start side. */
export type KeptLocks = "near" | "far" | "both" | "neither";

/** A piece that isn't a whole panel, at its panel place in a course. */
export interface CutPiece {
  /** The span that a whole panel would cover. */
  readonly panelPlace: Span;
  /** What the piece covers, from its nearest to its farthest point. */
  readonly cover: Span;
  /** What is cut for it: the cover, plus the fold at a gable and the allowance at a slant. */
  readonly blank: Span;
  readonly keeps: KeptLocks;
  readonly shapes: readonly Trapezoid[];
}

export const lengthOf = ({ fromIn, toIn }: Span): number => tidy(toIn - fromIn);

/** A piece for off-cut matching: how much of a panel it uses, and which locks. */
export interface Reusable {
  readonly blankIn: number;
  readonly keeps: KeptLocks;
}

export const reusable = ({ blank, keeps }: CutPiece): Reusable => ({ blankIn: lengthOf(blank), keeps });

/** The extra length that an end needs. At an opening the cut is plain, since the flashing covers it. */
const extraIn = (kind: EndKind, panel: LaidPanel): number => {
  if (kind === "gable") return panel.gableFoldIn;
  return kind === "slant" ? panel.slantAllowanceIn : 0;
};

interface End {
  readonly kind: EndKind;
  /** How far out the blank goes, measured away from the piece. */
  readonly outwardIn: number;
}

/** A piece that meets the next panel anywhere keeps its lock there; otherwise the flank with the longest blank decides. */
const endOf = (flanks: readonly Flank[], outwardIn: (flank: Flank) => number, panel: LaidPanel): End => {
  const ends = flanks.map((flank) => ({
    kind: flank.kind,
    outwardIn: outwardIn(flank) + extraIn(flank.kind, panel),
  }));
  const joint = ends.find(({ kind }) => kind === "joint");
  return joint ?? ends.reduce((a, b) => (b.outwardIn > a.outwardIn ? b : a));
};

const keptLocks = (nearEnd: EndKind, farEnd: EndKind): KeptLocks => {
  if (nearEnd === "joint") return farEnd === "joint" ? "both" : "near";
  return farEnd === "joint" ? "far" : "neither";
};

/** Measures a connected part of the roof within one panel place. */
export const cutPiece = (shapes: readonly Trapezoid[], panelPlace: Span, panel: LaidPanel): CutPiece => {
  const near = endOf(
    shapes.map((shape) => shape.near),
    ({ atLowIn, atHighIn }) => -Math.min(atLowIn, atHighIn),
    panel,
  );
  const far = endOf(
    shapes.map((shape) => shape.far),
    ({ atLowIn, atHighIn }) => Math.max(atLowIn, atHighIn),
    panel,
  );
  return {
    panelPlace,
    cover: { fromIn: Math.min(...shapes.map(nearestIn)), toIn: Math.max(...shapes.map(farthestIn)) },
    blank: { fromIn: -near.outwardIn, toIn: far.outwardIn },
    keeps: keptLocks(near.kind, far.kind),
    shapes,
  };
};
