import type { WorkbookPlan } from "../sheets/plan";

/** What stands in a workbook already, as far as a plan must keep out of its way. */
export interface Existing {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** A workbook that plans are written to. No plan knows which. */
export interface Host {
  readonly title: string;
  existing(): Promise<Existing>;
  /** Adds the plan's sheets and names: all of them, or none where anything fails. Nothing that exists is touched. */
  write(plan: WorkbookPlan): Promise<void>;
}
