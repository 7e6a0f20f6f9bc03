import type { PanelValues } from "../panelSheet";

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

export interface RidgeInput {
  readonly name: string;
  readonly length: number | string;
}

export interface TakeOffOptions {
  readonly job: string;
  readonly notes: readonly string[];
  readonly planes: readonly PlaneInput[];
  readonly ridges: readonly RidgeInput[];
  readonly waste: number;
  readonly panel: PanelValues;
}

/** A take-off to be filled in: rows and drop-downs stand ready, nothing is measured yet. */
export const BLANK_TAKE_OFF: TakeOffOptions = {
  job: "",
  notes: [],
  planes: [],
  ridges: [],
  waste: 0.1,
  panel: {},
};
