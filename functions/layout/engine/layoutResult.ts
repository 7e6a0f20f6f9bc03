import type { LayoutStart, Side } from "../../../shared/layoutStart";

/** A corner on the face: inches to the right of the plane's leftmost point, inches up from its lowest. */
export interface FacePoint {
  readonly xIn: number;
  readonly yIn: number;
}
export type Ring = readonly FacePoint[];

/** A piece that is cut, ready to be listed and drawn. */
export interface ListedCut {
  /** Counted from the start side, whole panels included. */
  readonly piece: number;
  /** From the start side's outermost point to where the piece begins to cover. */
  readonly positionIn: number;
  readonly coverIn: number;
  readonly blankIn: number;
  readonly keepsLock: Side | "both" | "none";
  /** The panel it is cut from; cut panels are numbered as they are opened. */
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
  /** Up from the eave to the course's lower edge. */
  readonly lineIn: number;
  readonly showsIn: number;
  readonly whole: number;
  readonly wholeRuns: readonly ListedRun[];
  readonly cuts: readonly ListedCut[];
  /** The course's first piece and its last, from the start side; undefined where nothing is to be covered. */
  readonly starter?: ListedEnd;
  readonly closing?: ListedEnd;
  /** Whole sentences' ends: "piece 3 covers ...". */
  readonly warnings: readonly string[];
}

/**
 * A laid roof plane as plain data. Tables, picture and counts all read this and work nothing out again.
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
  /** Opened: whole ones, and those that cut pieces come from. */
  readonly panels: number;
}
