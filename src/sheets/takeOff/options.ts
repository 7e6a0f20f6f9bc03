import type { PanelValues } from "../panelSheet";
import { BLANK_ROOF, type RoofInput } from "../roofSheet/options";

/** A roof plane as an estimator measures it; lengths in feet or as tape text. */
export interface PlaneInput {
  readonly name: string;
  readonly shape: "rectangle" | "triangle" | "trapezoid";
  readonly eave: number | string;
  readonly top?: number | string;
  /** Measured up the slope; else run and pitch give it. */
  readonly slopeLength?: number | string;
  readonly run?: number | string;
  readonly pitch?: number | string;
  readonly tail?: number | string;
  readonly gableEdges?: number;
}

/** Kinds of runs that are typed by hand; eaves and gables come from the planes. */
export const TYPED_KINDS = ["ridge", "hip", "valley"] as const;
export type TypedKind = (typeof TYPED_KINDS)[number];

export interface RunInput {
  readonly kind: TypedKind;
  readonly name: string;
  readonly length: number | string;
}

export interface TakeOffOptions {
  readonly job: string;
  readonly notes: readonly string[];
  /** A footprint to work the roof out from, on a front page of its own; undefined: planes are measured by hand only. */
  readonly roof?: RoofInput;
  readonly planes: readonly PlaneInput[];
  readonly runs: readonly RunInput[];
  readonly spare: number;
  readonly panel: PanelValues;
}

/** A take-off to be filled in: rows and drop-downs stand ready, nothing is measured yet. */
export const BLANK_TAKE_OFF: TakeOffOptions = {
  job: "",
  notes: [],
  planes: [],
  runs: [],
  spare: 0.1,
  panel: {},
};

/** The same with a front page for the footprint. */
export const BLANK_ROOF_TAKE_OFF: TakeOffOptions = { ...BLANK_TAKE_OFF, roof: BLANK_ROOF };
