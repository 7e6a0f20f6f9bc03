import type { Matrix } from "../../shared/cell";
import type { CellAddress } from "./address";
import type { Contents } from "./contents";
import type { Survey } from "./survey";
import type { ActiveSheet } from "./activeSheet";
import type { CellPatch, Undo } from "./patch";
import type { WorkbookPlan } from "./plan";
import type { ProgressMonitor } from "./progressMonitor";

/** The sheet names and defined names that a workbook has. New ones must differ. */
export interface Existing {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

export interface ExistingWithActive extends Existing {
  readonly activeSheetName: string;
}

export interface SheetPicture {
  readonly sheet: string;
  readonly at: CellAddress;
  /** A whole SVG file. */
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface Repaired {
  /** Cells whose formulas were entered again. */
  readonly entered: number;
  /** How many of them still show #NAME?. */
  readonly stillUnknown: number;
  /** Sheets left alone because they are protected. */
  readonly protectedSheets: readonly string[];
  /** Restores the formulas; undefined if none was entered. */
  readonly undo?: Undo;
}

/** Sheets that were added, and how to remove them. */
export interface Added {
  readonly sheets: readonly string[];
  /** What the user may have overlooked, one sentence each. */
  readonly remarks?: readonly string[];
  readonly undo: Undo;
}

/** A workbook that plans are written to: Excel, or the local workbook. Plans don't know which. */
export interface Host {
  readonly title: string;
  existing(): Promise<ExistingWithActive>;
  /** What the active sheet shows. */
  activeSheet(): Promise<ActiveSheet>;
  /** The values of the cells that a defined name refers to; undefined if the workbook has no such name. */
  namedRange(name: string): Promise<Matrix | undefined>;
  /** What every sheet shows, and what the defined names refer to. */
  contents(): Promise<Contents>;
  /** Calls back when the selection, a cell or a result changes; returns how to stop. */
  watch(listener: () => void): () => void;
  /** Puts a picture on a sheet, over the cells, with its top left corner at `at`. Returns how to remove it. */
  putPicture(picture: SheetPicture): Promise<Undo>;
  /**
   * Adds the plan's sheets and names: all of them, or none if anything fails. Nothing that exists is changed. Returns how to
   * remove them, which is refused once someone has edited or used them.
   */
  addSheets(plan: WorkbookPlan): Promise<Undo>;
  /** All about the active sheet that matters before writing into it. */
  survey(): Promise<Survey>;
  /**
   * Writes into blank cells of a sheet: all of them, or none if one is filled, merged or protected, if anything fails, or if the
   * user cancels. Returns how to undo exactly that.
   */
  putCells(patch: CellPatch, run?: ProgressMonitor): Promise<Undo>;
  /** Enters formulas that show #NAME? again. Only for hosts that can open a workbook before the functions are loaded. */
  repair?(run?: ProgressMonitor): Promise<Repaired>;
}
