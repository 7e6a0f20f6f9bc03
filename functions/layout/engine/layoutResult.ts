import type { LayoutStart, Side } from "../../../shared/layoutStart";

/** A corner on the face: inches right of the leftmost point of the plane, inches up from the lowest. */
export interface FacePoint {
  readonly xIn: number;
  readonly yIn: number;
}
export type Ring = readonly FacePoint[];

/** A cut piece, for tables and drawings. */
export interface ListedCut {
  /** Numbered from the start side, whole panels included. */
  readonly piece: number;
  /** From the outermost point of the start side to where the piece begins to cover. */
  readonly positionIn: number;
  readonly coverIn: number;
  readonly blankIn: number;
  readonly keepsLock: Side | "both" | "none";
  /** The panel that it is cut from, numbered in order of use. */
  readonly panelNumber: number;
  readonly isOffcut: boolean;
  /** What it covers on the face: an outline, then any holes. */
  readonly rings: readonly Ring[];
  readonly warnings: readonly string[];
}

/** Whole panels side by side, from the left. */
interface ListedRun {
  readonly xIn: number;
  readonly count: number;
}

export interface ListedEnd {
  readonly coverIn: number;
  readonly blankIn: number;
}

export interface ListedCourse {
  readonly course: number;
  /** From the eave up to the lower edge of the course. */
  readonly lineIn: number;
  readonly showsIn: number;
  readonly whole: number;
  readonly wholeRuns: readonly ListedRun[];
  readonly cuts: readonly ListedCut[];
  /** The first and last piece of the course from the start side; undefined where there is nothing to cover. */
  readonly starter?: ListedEnd;
  readonly closing?: ListedEnd;
  /** Such as "piece 3 covers ...". */
  readonly warnings: readonly string[];
}

/**
 * The layout of a roof plane as plain data. Tables, drawings and counts all read it and calculate nothing again.
 */
export interface Layout {
  readonly start: LayoutStart;
  readonly panelWidthIn: number;
  readonly panelHeightIn: number;
  readonly widthIn: number;
  readonly heightIn: number;
  readonly outline: Ring;
  readonly openings: readonly Ring[];
  readonly courses: readonly ListedCourse[];
  readonly whole: number;
  readonly cut: number;
  readonly fromOffcuts: number;
  /** Panels used: whole ones, and those that pieces are cut from. */
  readonly panels: number;
}
