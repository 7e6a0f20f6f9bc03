import type { TrimEdge } from "../../../shared/trimKinds";
import type { PanelValues } from "../panelSheet";
import { BLANK_ROOF, type RoofInput } from "../roofSheet/roofSheetOptions";
import type { TrimFigures } from "./trimsSheet";

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

/** A typed run of trim. Eaves and gables come from the planes. */
export interface RunInput {
  readonly edge: TrimEdge;
  readonly name: string;
  readonly length: number | string;
}

/** A roof penetration with flashing: a chimney, measured level, or a pipe. */
export type PenetrationInput =
  | {
      readonly kind: "chimney";
      readonly name: string;
      readonly width: number | string;
      readonly depth: number | string;
      readonly pitch: number | string;
    }
  | { readonly kind: "pipe"; readonly name: string };

/** Inputs for ice barrier and vents. What is omitted isn't calculated. */
export interface DeckInput {
  readonly overhangIn?: number | string;
  readonly wallIn?: number | string;
  readonly atticFloorSqFt?: number;
}

/** A supplier's figures for an item of the order. */
export interface SupplyInput {
  readonly price?: number;
  readonly weightLb?: number;
  readonly perPack?: number;
}

export interface TakeoffOptions {
  readonly job: string;
  readonly notes: readonly string[];
  /** A footprint, for a roof sheet in front; undefined: all planes are measured by hand. */
  readonly roof?: RoofInput;
  readonly planes: readonly PlaneInput[];
  readonly runs: readonly RunInput[];
  readonly penetrations: readonly PenetrationInput[];
  readonly deck: DeckInput;
  /** Waste: the fraction of the panels that is ordered on top. */
  readonly spare: number;
  readonly supplies: Readonly<Record<string, SupplyInput>>;
  /** Figures for the Trims sheet, by the trim's label. */
  readonly trims: Readonly<Record<string, TrimFigures>>;
  readonly panel: PanelValues;
}

/** A takeoff to fill in: rows and drop-down lists are ready, nothing is measured yet. */
export const BLANK_TAKEOFF: TakeoffOptions = {
  job: "",
  notes: [],
  planes: [],
  runs: [],
  penetrations: [],
  deck: {},
  spare: 0.1,
  supplies: {},
  trims: {},
  panel: {},
};

/** The same with a roof sheet for the footprint. */
export const BLANK_ROOF_TAKEOFF: TakeoffOptions = { ...BLANK_TAKEOFF, roof: BLANK_ROOF };
