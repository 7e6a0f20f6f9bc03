import type { Matrix } from "../../shared/cell";
import type { CellAddress } from "./address";
import type { Contents } from "./contents";
import type { Survey } from "./survey";
import type { ActiveSheet } from "./activeSheet";
import type { CellPatch, Undo } from "./patch";
import type { WorkbookPlan } from "./plan";
import type { ProgressMonitor } from "./progressMonitor";

/** What stands in a workbook already, as far as a plan must keep out of its way. */
export interface Existing {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

export interface ExistingWithActive extends Existing {
  /** The sheet in front, by its name. */
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
  /** Those among them that show #NAME? still. */
  readonly stillUnknown: number;
  /** Sheets left alone because they are protected. */
  readonly protectedSheets: readonly string[];
  /** Brings the formulas back as they were; undefined where none was entered. */
  readonly undo?: Undo;
}

/** Sheets that were added, and how to take them away. */
export interface Added {
  readonly sheets: readonly string[];
  /** What a person may have overlooked, a sentence each. */
  readonly remarks?: readonly string[];
  readonly undo: Undo;
}

/** A workbook that plans are written to. No plan knows which. */
export interface Host {
  readonly title: string;
  existing(): Promise<ExistingWithActive>;
  /** The sheet in front, as it shows. */
  activeSheet(): Promise<ActiveSheet>;
  /** The cells that a name stands for; undefined where there is no such name. */
  namedRange(name: string): Promise<Matrix | undefined>;
  /** Every sheet as it stands, and what the names stand for. */
  contents(): Promise<Contents>;
  /** Calls back when the selection, a cell or a result changes; returns how to stop. */
  watch(listener: () => void): () => void;
  /** Puts a picture on a sheet, over the cells from `at` on; returns how to take it away. */
  putPicture(picture: SheetPicture): Promise<Undo>;
  /**
   * Adds the plan's sheets and names: all of them, or none where anything fails. Nothing that exists is touched. Returns how
   * to take them away, as long as nobody has gone on with them.
   */
  addSheets(plan: WorkbookPlan): Promise<Undo>;
  /** The sheet in front, as somebody must know it who wants to write into it. */
  survey(): Promise<Survey>;
  /**
   * Writes into blank cells of a sheet: all of them, or none where one holds something, is merged or protected, or where
   * anything fails or the run is canceled. Returns how to take it back, exactly.
   */
  putCells(patch: CellPatch, run?: ProgressMonitor): Promise<Undo>;
  /** Enters formulas again that were left at #NAME?, where a workbook may be opened before the functions are there. */
  repair?(run?: ProgressMonitor): Promise<Repaired>;
}
