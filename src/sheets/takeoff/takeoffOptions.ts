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

/** A run of trim that is typed: eaves and gables come from the planes. */
export interface RunInput {
  readonly edge: TrimEdge;
  readonly name: string;
  readonly length: number | string;
}

/** What goes through the roof and is flashed: a chimney with its sides, measured level, or a pipe. */
export type PenetrationInput =
  | {
      readonly kind: "chimney";
      readonly name: string;
      readonly width: number | string;
      readonly depth: number | string;
      readonly pitch: number | string;
    }
  | { readonly kind: "pipe"; readonly name: string };

/** What the deck needs beside underlayment; nothing is asked of what is left out. */
export interface DeckInput {
  readonly overhangIn?: number | string;
  readonly wallIn?: number | string;
  readonly atticFloorSqFt?: number;
}

/** Figures of the supplier's for an item of the order, by the item's name. */
export interface SupplyInput {
  readonly price?: number;
  readonly weightLb?: number;
  readonly perPack?: number;
}

export interface TakeoffOptions {
  readonly job: string;
  readonly notes: readonly string[];
  /** A footprint to work the roof out from, on a front page of its own; undefined: planes are measured by hand only. */
  readonly roof?: RoofInput;
  readonly planes: readonly PlaneInput[];
  readonly runs: readonly RunInput[];
  readonly penetrations: readonly PenetrationInput[];
  readonly deck: DeckInput;
  /** Share of the panels that is ordered on top. */
  readonly spare: number;
  readonly supplies: Readonly<Record<string, SupplyInput>>;
  /** What the table of trims shows beside the usual, by a trim's label. */
  readonly trims: Readonly<Record<string, TrimFigures>>;
  readonly panel: PanelValues;
}

/** A takeoff to be filled in: rows and drop-downs stand ready, nothing is measured yet. */
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

/** The same with a front page for the footprint. */
export const BLANK_ROOF_TAKEOFF: TakeoffOptions = { ...BLANK_TAKEOFF, roof: BLANK_ROOF };
