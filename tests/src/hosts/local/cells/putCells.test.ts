import {
  ICommandService,
  IUndoRedoService,
  IUniverInstanceService,
  UndoCommand,
  type ICellData,
  type IStyleData,
} from "@univerjs/core";
import {
  AddWorksheetMergeMutation,
  EditStateEnum,
  InsertRowMutation,
  RangeProtectionRuleModel,
  RemoveSheetMutation,
  SetRowHiddenMutation,
  UnitObject,
  ViewStateEnum,
  WorksheetProtectionRuleModel,
} from "@univerjs/sheets";
import { CellError } from "../../../../../shared/cell";
import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { putCells } from "../../../../../src/hosts/local/cells/putCells";
import { readArea } from "../../../../../src/workbook/address";
import type { CellPatch } from "../../../../../src/workbook/patch";
import {
  formula,
  number,
  text,
  value,
  type PlannedCell,
  type WorkbookPlan,
} from "../../../../../src/workbook/plan";
import { panelSheet } from "../../../../../src/sheets/panelSheet";
import { extended } from "../../../../support/extended";
import { placeOf } from "../../../../support/place";

let engine: HeadlessEngine;

/** The sheet's cells as the engine would save them, each with its full style, because equal styles may have two ids. */
const snapshot = () => {
  const { sheets, styles } = engine.workbook.save();
  const { cellData = {} } = Object.values(sheets).find(({ name }) => name === "Bid") ?? {};
  const inFull = (cell: ICellData) => ({ ...cell, s: typeof cell.s === "string" ? styles[cell.s] : cell.s });
  const rows = Object.entries(cellData).map(([row, cells]) => {
    const filled = Object.entries(cells as Record<string, ICellData>);
    return [row, Object.fromEntries(filled.map(([at, cell]) => [at, structuredClone(inFull(cell))]))];
  });
  return Object.fromEntries(rows) as Record<string, Record<string, { s?: IStyleData | null }>>;
};

/** Makes the engine's nth command from now on fail: before it does anything, after it, or with a refusal. */
const failAt = (step: number, how: "before" | "after" | "refuses"): void => {
  const commands = engine.injector.get(ICommandService);
  const execute = commands.syncExecuteCommand.bind(commands);
  let steps = 0;
  jest.spyOn(commands, "syncExecuteCommand").mockImplementation((...command) => {
    const isLast = steps++ === step;
    if (isLast && how === "refuses") return false;
    if (isLast && how === "before") throw new Error("the engine failed as the test asked");
    const result = execute(...command);
    if (isLast) throw new Error("the engine failed as the test asked");
    return result;
  });
};

afterEach(() => {
  engine.dispose();
});

const ROWS: readonly (readonly (string | number | null)[])[] = [
  ["Plane", "Eave (ft)", "Slope (in)", "Pitch"],
  ["North", 30, 168, "6:12"],
  ["South", 20, "14 ft", "26.565°"],
  ["Left blank", null, null, null],
  ["Half done", 10, null, "8/12"],
  ["Total", "=SUM(B2:B5)", null, null],
];

const cellsOf = (rows: typeof ROWS): PlannedCell[] =>
  rows.flatMap((line, row) =>
    line.flatMap((content, column): PlannedCell[] =>
      content === null
        ? []
        : [
            {
              row,
              column,
              content: String(content).startsWith("=") ? formula(String(content)) : value(content),
              ...(row === 0 && { style: "heading" as const }),
            },
          ],
    ),
  );

const bid = (): WorkbookPlan => {
  const panel = panelSheet("Panel", { exposedWidthIn: 24, exposedHeightIn: 12 });
  const sheet = { name: "Bid", cells: cellsOf(ROWS), columnWidths: [], rowHeights: {}, frozenRows: 0 };
  return { sheets: [sheet, panel.sheet], names: panel.names };
};

const open = async (): Promise<void> => {
  engine = createHeadlessEngine(localCatalog, bid());
  await engine.calculated();
};

const IDS = ["COURSES", "SQUARES", "PITCHANGLE", "PANELCOUNT"];
const patchOf = (ids = IDS): CellPatch => extended(engine.survey("Bid", readArea("A1")), ids);
const shown = (address: string) => engine.getCell({ sheet: "Bid", ...placeOf(address) });
const column = (letter: string) => [1, 2, 3, 4, 5, 6].map((row) => shown(`${letter}${row}`));

describe("columns beside a block in the local workbook", () => {
  beforeEach(open);

  /** Worked out by hand: 14 ft in 12 in courses is 14 courses; 30 x 14 = 420 sq ft, 20 x 14 = 280; half a rise is 26.565°. */
  it("give a result in every row: with units converted, as text, blank, and with a missing value", async () => {
    await engine.putCells(patchOf());
    await engine.calculated();
    const missing = (sentence: string) =>
      new CellError("#VALUE!", expect.stringContaining(sentence) as string);
    expect(column("E").slice(0, 4)).toEqual(["Courses", 14, 14, ""]);
    expect(column("F").slice(0, 4)).toEqual(["Squares", expect.closeTo(4.2, 9), expect.closeTo(2.8, 9), ""]);
    expect(column("F")[4]).toEqual(missing("slopeLength is missing"));
    expect(column("G").slice(1, 5)).toEqual([
      expect.closeTo(26.565, 3),
      expect.closeTo(26.565, 3),
      "",
      expect.closeTo(33.69, 2),
    ]);
    expect(shown("G6")).toBeNull();
    expect(shown("E6")).toBe(28);
    expect(shown("H2")).toBeGreaterThan(0);
  });

  it("have the format of the column beside them, and follow edits", async () => {
    await engine.putCells(patchOf(["COURSES"]));
    engine.setCell({ sheet: "Bid", ...placeOf("C2") }, 240);
    await engine.calculated();
    expect(shown("E2")).toBe(20);
    const styleOf = (row: number, at: number) => snapshot()[row]?.[at]?.s;
    expect(styleOf(0, 4)).toEqual(styleOf(0, 3));
    expect(styleOf(1, 4)?.n).toEqual({ pattern: "#,##0" });
  });

  it("fill a row with another row's format, and its number format too if a cell's own style has none", async () => {
    await engine.putCells(patchOf(["COURSES", "SQUARES", "PITCHANGLE"]));
    await engine.calculated();
    const style = (row: number, at: number, s: IStyleData): void => {
      engine.workbook
        .getSheetBySheetName("Bid")
        ?.getCellMatrix()
        .setValue(row, at, { ...engine.workbook.getSheetBySheetName("Bid")?.getCellRaw(row, at), s });
    };
    style(1, 4, { bl: 1, n: { pattern: "#,##0" } });
    style(7, 5, { it: 1 });
    style(7, 6, { n: { pattern: "0.0" } });
    const before = snapshot();
    const cells = ["=B8", "=B8*2", "=B8*3"].map((each) => ({ content: formula(each) }));
    const undo = await engine.putCells({
      sheet: "Bid",
      at: { row: 7, column: 4 },
      cells: [cells],
      copyFormatsFrom: { row: 1 },
    });
    const styles = [4, 5, 6].map((at) => snapshot()[7]?.[at]?.s);
    expect(styles).toEqual([
      { bl: 1, n: { pattern: "#,##0" } },
      { it: 1, n: { pattern: "#,##0.00" } },
      { n: { pattern: "0.0" } },
    ]);
    await undo();
    await engine.calculated();
    expect(snapshot()).toEqual(before);
  });

  it("are undone without a trace", async () => {
    const before = snapshot();
    const undo = await engine.putCells(patchOf());
    await engine.calculated();
    expect(snapshot()).not.toEqual(before);
    await undo();
    await engine.calculated();
    expect(snapshot()).toEqual(before);
  });

  it("stay if someone has edited one since", async () => {
    const undo = await engine.putCells(patchOf(["COURSES"]));
    engine.setCell({ sheet: "Bid", ...placeOf("E3") }, 15);
    await engine.calculated();
    await expect(undo()).rejects.toThrow('E3 on "Bid" has changed since; nothing was undone.');
    expect(shown("E3")).toBe(15);
  });

  it.each(["before", "after", "refuses"] as const)(
    "are all there or none, whichever step fails: %s",
    async (how) => {
      let failures = 0;
      for (let step = 0, isDone = false; !isDone; step++) {
        const before = snapshot();
        failAt(step, how);
        try {
          const undo = await engine.putCells(patchOf());
          jest.restoreAllMocks();
          await undo();
          isDone = true;
        } catch {
          failures++;
        }
        jest.restoreAllMocks();
        expect(snapshot()).toEqual(before);
      }
      expect(failures).toBeGreaterThan(0);
    },
  );

  it.each(["before", "after", "refuses"] as const)(
    "go away all or none, whichever step fails: %s",
    async (how) => {
      // Restoring a blank cell with its own style takes one more step.
      engine.workbook
        .getSheetBySheetName("Bid")
        ?.getCellMatrix()
        .setValue(2, 4, { s: { bl: 1 } });
      const before = snapshot();
      let failures = 0;
      const undo = await engine.putCells(patchOf());
      const written = snapshot();
      for (let step = 0, isDone = false; !isDone; step++) {
        failAt(step, how);
        isDone = await undo().then(
          () => true,
          () => false,
        );
        jest.restoreAllMocks();
        if (!isDone) failures++;
        expect(snapshot()).toEqual(isDone ? before : written);
      }
      expect(failures).toBe(2);
    },
  );
});

describe("what the local workbook refuses to overwrite", () => {
  beforeEach(open);

  const one = (address: string, content: string): CellPatch => ({
    sheet: "Bid",
    at: placeOf(address),
    cells: [[{ content: text(content) }, { content: number(1) }]],
  });

  it.each([
    ["a value", "A2", 'A2 holds "North", B2 holds 30. Nothing was written.'],
    ["a formula", "B6", "B6 holds 60. Nothing was written."],
    ["the sheet's end", "Z2", "Z2:AA2 goes past the sheet's end"],
  ])("%s", async (_, address, message) => {
    await expect(engine.putCells(one(address, "x"))).rejects.toThrow(message);
  });

  it("a formula that shows nothing, and the cells of a spill", async () => {
    engine.setCell({ sheet: "Bid", ...placeOf("J2") }, '=""');
    engine.setCell({ sheet: "Bid", ...placeOf("L1") }, "=SEQUENCE(3)");
    await engine.calculated();
    await expect(engine.putCells(one("I2", "x"))).rejects.toThrow('J2 holds "=""". Nothing was written.');
    await expect(engine.putCells(one("K3", "x"))).rejects.toThrow("L3 holds 3. Nothing was written.");
  });

  const ids = () => ({
    unitId: engine.workbook.getUnitId(),
    subUnitId: engine.workbook.getSheetBySheetName("Bid")?.getSheetId() ?? "",
  });
  const ranges = (address: string) => {
    const { from, to } = readArea(address);
    return [{ startRow: from.row, endRow: to.row, startColumn: from.column, endColumn: to.column }];
  };

  it("merged cells; the survey reports them, and hidden rows too", async () => {
    const commands = engine.injector.get(ICommandService);
    commands.syncExecuteCommand(AddWorksheetMergeMutation.id, { ...ids(), ranges: ranges("J2:K3") });
    commands.syncExecuteCommand(SetRowHiddenMutation.id, { ...ids(), ranges: ranges("A3:A4") });
    expect(engine.survey("Bid", readArea("A1"))).toMatchObject({
      merged: [readArea("J2:K3")],
      hiddenRows: [2, 3],
      isProtected: false,
    });
    await expect(engine.putCells(one("I2", "x"))).rejects.toThrow("J2:K3 is merged. Nothing was written.");
  });

  it("a protected range, and a protected sheet", async () => {
    const rule = { ...ids(), permissionId: "p", id: "r", unitType: UnitObject.SelectRange };
    const states = { viewState: ViewStateEnum.OthersCanView, editState: EditStateEnum.OnlyMe };
    engine.injector
      .get(RangeProtectionRuleModel)
      .addRule(rule.unitId, rule.subUnitId, { ...rule, ...states, ranges: ranges("J2:J9") });
    await expect(engine.putCells(one("I2", "x"))).rejects.toThrow(
      'I2:J2 of "Bid" is protected. Nothing was written.',
    );
    await engine.putCells(one("K2", "x"));
    engine.injector
      .get(WorksheetProtectionRuleModel)
      .addRule(rule.unitId, { ...rule, ...states, unitType: UnitObject.Worksheet });
    await expect(engine.putCells(one("M2", "x"))).rejects.toThrow("is protected");
    expect(engine.survey("Bid", readArea("A1")).isProtected).toBe(true);
  });

  it("a sheet that was deleted", async () => {
    await expect(engine.putCells({ ...one("K3", "x"), sheet: "Old" })).rejects.toThrow(
      'There is no sheet "Old"',
    );
  });

  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "6:12"])(
    "%j as anything but text",
    async (risky) => {
      await engine.putCells(one("J9", risky));
      await engine.calculated();
      expect(shown("J9")).toBe(risky);
    },
  );
});

describe("a long write in the local workbook", () => {
  const LAST_ROW = 5_000;
  const patch: CellPatch = {
    sheet: "Bid",
    at: { row: 1, column: 1 },
    cells: Array.from({ length: LAST_ROW }, (_, row) => [{ content: number(row) }]),
  };
  const cell = (row: number, column: number) => engine.getCell({ sheet: "Bid", row, column });

  beforeEach(async () => {
    const end: PlannedCell = { row: LAST_ROW + 1, column: 0, content: text("end") };
    const sheet = { name: "Bid", cells: [end], columnWidths: [], rowHeights: {}, frozenRows: 0 };
    engine = createHeadlessEngine(localCatalog, { sheets: [sheet], names: [] });
    engine.injector.get(IUniverInstanceService).focusUnit(engine.workbook.getUnitId());
    await engine.calculated();
  });

  /** Writes, and calls `act` when the page would rest for the first time. */
  const put = (meanwhile: (stop: AbortController) => void, told: string[] = []) => {
    const stop = new AbortController();
    const shares: number[] = [];
    let rests = 0;
    const undo = putCells(engine.injector, engine.workbook, patch, {
      run: { onProgress: (share) => shares.push(share), signal: stop.signal },
      rest: () => {
        if (rests++ === 0) meanwhile(stop);
        return Promise.resolve();
      },
      tell: (message) => told.push(message),
    });
    return { undo, shares };
  };

  it("reports its progress, and is one Undo step", async () => {
    const before = snapshot();
    const { undo, shares } = put(() => undefined);
    await undo;
    expect(shares.map((share) => Math.round(share * 100))).toEqual([33, 67, 100]);
    expect(cell(LAST_ROW, 1)).toBe(LAST_ROW - 1);
    expect(await engine.injector.get(ICommandService).executeCommand(UndoCommand.id)).toBe(true);
    expect(snapshot()).toEqual(before);
  });

  it("leaves nothing behind if it is canceled, and nothing to undo", async () => {
    const before = snapshot();
    let meanwhile: unknown;
    const { undo } = put((stop) => {
      meanwhile = cell(1, 1);
      stop.abort(new Error("Canceled: nothing was written."));
    });
    await expect(undo).rejects.toThrow("Canceled: nothing was written.");
    expect(meanwhile).toBe(0);
    expect(snapshot()).toEqual(before);
    expect(engine.injector.get(IUndoRedoService).pitchTopUndoElement()).toBeNull();
  });

  it("is undone piece by piece, or stays if the Undo is canceled", async () => {
    const before = snapshot();
    const { undo: written } = put(() => undefined);
    const undo = await written;
    const after = snapshot();
    const stop = new AbortController();
    const onProgress = (): void => stop.abort(new Error("Canceled: what was written stays."));
    await expect(undo({ onProgress, signal: stop.signal })).rejects.toThrow("what was written stays");
    expect(snapshot()).toEqual(after);
    const shares: number[] = [];
    await undo({ onProgress: (share) => shares.push(share), signal: new AbortController().signal });
    expect(shares.map((share) => Math.round(share * 100))).toEqual([33, 67, 100]);
    expect(snapshot()).toEqual(before);
  });

  it("allows edits elsewhere meanwhile, but not of its own cells, their rows or their sheet", async () => {
    const told: string[] = [];
    const ids = {
      unitId: engine.workbook.getUnitId(),
      subUnitId: engine.workbook.getSheetBySheetName("Bid")?.getSheetId(),
    };
    const range = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 25 };
    const commands = engine.injector.get(ICommandService);
    const { undo } = put(() => {
      engine.setCell({ sheet: "Bid", row: 3, column: 0 }, "typed");
      engine.setCell({ sheet: "Bid", row: LAST_ROW, column: 1 }, "mine");
      commands.syncExecuteCommand(InsertRowMutation.id, { ...ids, range });
      commands.syncExecuteCommand(RemoveSheetMutation.id, { ...ids, subUnitName: "Bid" });
    }, told);
    await undo;
    expect([cell(3, 0), cell(LAST_ROW, 1)]).toEqual(["typed", LAST_ROW - 1]);
    expect(told).toEqual(Array(3).fill('"Bid" is being written to. Wait until that finishes, or cancel it.'));
    engine.setCell({ sheet: "Bid", row: LAST_ROW, column: 1 }, "mine");
    expect(cell(LAST_ROW, 1)).toBe("mine");
  });
});
