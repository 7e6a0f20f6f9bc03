import type { Contents } from "../../src/workbook/contents";
import type { Host } from "../../src/workbook/host";
import { localCatalog } from "../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine, type HeadlessEngine } from "../../src/hosts/local/workbook/headless";
import { readArea, sheetPrefix } from "../../src/workbook/address";
import {
  formula,
  number,
  text,
  type CellContent,
  type PlannedCell,
  type SheetPlan,
  type WorkbookPlan,
} from "../../src/workbook/plan";

const contentOf = (typed: string | number | null): CellContent | null => {
  if (typed === null) return null;
  if (typeof typed === "number") return number(typed);
  return typed.startsWith("=") ? formula(typed) : text(typed);
};

const notHere = (): never => {
  throw new Error("this workbook is for plans only");
};

/** The contents of each plan of this test file: its tests begin alike, and a takeoff takes the engine most of a second. */
const calculatedContents = new Map<string, Promise<Contents>>();

/** A workbook without a window: plans are written to it, cells typed into it, and the local workbook's engine calculates it. */
export class PlanWorkbook {
  /** Holds the plan, once something needed it calculated. */
  private engine: HeadlessEngine | undefined;
  private activeSheetName: string;

  constructor(private plan: WorkbookPlan) {
    this.activeSheetName = plan.sheets[0]?.name ?? "";
  }

  private change(plan: WorkbookPlan): void {
    this.plan = plan;
    this.dispose();
  }

  async calculated(): Promise<HeadlessEngine> {
    const engine = (this.engine ??= createHeadlessEngine(localCatalog, this.plan));
    await engine.calculated();
    return engine;
  }

  private contents(): Promise<Contents> {
    const key = JSON.stringify(this.plan);
    const contents = calculatedContents.get(key) ?? this.calculated().then((engine) => engine.contents());
    calculatedContents.set(key, contents);
    return contents;
  }

  type(sheet: string, address: string, typed: string | number | null): void {
    const { row, column } = readArea(address).from;
    const edited = (each: SheetPlan): SheetPlan => {
      const old = each.cells.find((cell) => cell.row === row && cell.column === column);
      const others = each.cells.filter((cell) => cell !== old);
      return { ...each, cells: [...others, { ...old, row, column, content: contentOf(typed) }] };
    };
    this.plan = {
      ...this.plan,
      sheets: this.plan.sheets.map((each) => (each.name === sheet ? edited(each) : each)),
    };
    this.engine?.setCell({ sheet, row, column }, typed);
  }

  /** As spreadsheets do it: formulas and names follow. */
  rename(sheet: string, to: string): void {
    const [from, after] = [sheetPrefix(sheet), sheetPrefix(to)];
    const followed = (each: SheetPlan): SheetPlan => ({
      ...each,
      name: each.name === sheet ? to : each.name,
      cells: each.cells.map((cell) =>
        cell.content?.kind === "formula"
          ? { ...cell, content: formula(cell.content.formula.replaceAll(from, after)) }
          : cell,
      ),
    });
    this.change({
      sheets: this.plan.sheets.map(followed),
      names: this.plan.names.map((name) => (name.sheet === sheet ? { ...name, sheet: to } : name)),
    });
    if (this.activeSheetName === sheet) this.activeSheetName = to;
  }

  /** Puts a sheet's tab before all others. */
  moveFirst(sheet: string): void {
    const { sheets } = this.plan;
    const isIt = ({ name }: SheetPlan): boolean => name === sheet;
    this.change({
      ...this.plan,
      sheets: [...sheets.filter(isIt), ...sheets.filter((each) => !isIt(each))],
    });
  }

  goTo(sheet: string): void {
    this.activeSheetName = sheet;
  }

  isProtected(sheet: string): boolean {
    return this.plan.sheets.find(({ name }) => name === sheet)?.isProtected ?? false;
  }

  readonly host: Host = {
    title: "a workbook of plans",
    existing: () =>
      Promise.resolve({
        sheets: this.plan.sheets.map(({ name }) => name),
        names: this.plan.names.map(({ name }) => name),
        activeSheetName: this.activeSheetName,
      }),
    contents: () => this.contents(),
    activeSheet: () =>
      Promise.resolve({ sheet: this.activeSheetName, selected: { row: 0, column: 0 }, cells: [] }),
    addSheets: (plan) => {
      const before = this.plan;
      this.change({
        sheets: [...before.sheets, ...plan.sheets],
        names: [...before.names, ...plan.names],
      });
      this.activeSheetName = plan.sheets[0]?.name ?? this.activeSheetName;
      return Promise.resolve(() => {
        this.change(before);
        return Promise.resolve();
      });
    },
    namedRange: notHere,
    watch: notHere,
    putPicture: notHere,
    survey: notHere,
    putCells: ({ sheet, at, cells }) => {
      const before = this.plan;
      const written = cells.flatMap((line, row) =>
        line.map((cell, column): PlannedCell => ({
          row: at.row + row,
          column: at.column + column,
          content: cell?.content ?? null,
        })),
      );
      const isWritten = ({ row, column }: PlannedCell): boolean =>
        written.some((cell) => cell.row === row && cell.column === column);
      this.change({
        ...before,
        sheets: before.sheets.map((each) =>
          each.name === sheet
            ? { ...each, cells: [...each.cells.filter((cell) => !isWritten(cell)), ...written] }
            : each,
        ),
      });
      return Promise.resolve(() => {
        this.change(before);
        return Promise.resolve();
      });
    },
  };

  dispose(): void {
    this.engine?.dispose();
    this.engine = undefined;
  }
}
