/** A workbook as it was at some time, kept on this computer by the browser. Its .xlsx file is stored apart, so that a list is quick. */
export interface KeptState {
  readonly id: number;
  /** Which workbook: each tab has its own. */
  readonly workbook: string;
  /** The file's name, or the job's. */
  readonly name: string;
  /** The file that the workbook was opened from or last saved to. */
  readonly fileName?: string;
  readonly keptAt: number;
  readonly sizeBytes: number;
  /** Whether a file holds this state as well. */
  readonly isInFile: boolean;
}

/** A state that is about to be kept. */
export type NewState = Omit<KeptState, "id" | "sizeBytes">;
