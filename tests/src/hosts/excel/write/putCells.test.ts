import { excelHost } from "../../../../../src/hosts/excel/excelHost";
import type { Host } from "../../../../../src/workbook/host";
import type { CellPatch } from "../../../../../src/workbook/patch";
import { formula, number, text } from "../../../../../src/workbook/plan";
import { extended } from "../../../../support/extended";
import { fakeExcel, fakeWorkbook, type FakeSheet, type FakeWorkbook } from "../../../../support/fakeExcel";

const hostOf = (workbook: FakeWorkbook): Host =>
  excelHost(fakeExcel(workbook), () => Promise.reject(new Error("no picture was to be inserted")));

const stateOf = ({ sheets, names }: FakeWorkbook): string =>
  JSON.stringify([sheets.map((sheet) => ({ ...sheet, cells: [...sheet.cells].sort() })), [...names]]);

/** An estimator's sheet: four columns from A1 on, three rows, a total. */
const bid = (): { workbook: FakeWorkbook; sheet: FakeSheet } => {
  const workbook = fakeWorkbook("Bid", "Other");
  const sheet = workbook.sheets[0] as FakeSheet;
  const rows = [
    ["Plane", "Eave (ft)", "Slope (in)", "Pitch"],
    ["North", 30, 168, 6],
    ["South", 20, "14 ft", 6],
    ["Total", "=SUM(B2:B3)", "", ""],
  ];
  rows.forEach((line, row) => {
    line.forEach((content, column) => {
      if (content !== "")
        sheet.cells.set(`${"ABCD"[column]}${row + 1}`, {
          formula: content,
          ...(row === 0 && { fill: "#abcdef" }),
        });
    });
  });
  sheet.cells.set("D2", { formula: 6, numberFormat: "@" });
  return { workbook, sheet };
};

const IDS = ["PITCHANGLE", "OUTLINEAREA", "TRIMFEET"];
const patchOf = async (workbook: FakeWorkbook): Promise<CellPatch> =>
  extended(await hostOf(workbook).survey(), IDS);

describe("columns beside a block in Excel, on a stand-in", () => {
  it("are written in one step, with formats, and change nothing else", async () => {
    const { workbook, sheet } = bid();
    const before = new Map(sheet.cells);
    const patch = await patchOf(workbook);
    workbook.syncs = 0;
    await hostOf(workbook).putCells(patch);
    // What the sheet is, what stands in the cells, whether it still does, and the write.
    expect(workbook.syncs).toBe(4);
    expect(sheet.cells.get("E1")).toEqual({ formula: "Pitch (degrees)", fill: "#abcdef" });
    // The neighbor has text format, in which a formula would stay text.
    expect(sheet.cells.get("E2")).toEqual({
      formula: '=IF(LEN(D2)=0,"",GABLE.PITCHANGLE(D2))',
      numberFormat: "0.00",
    });
    expect(sheet.cells.get("G4")).toEqual({ formula: "=SUM(G2:G3)", numberFormat: "#,##0.00" });
    expect(sheet.cells.has("E4")).toBe(false);
    for (const [address, cell] of before) expect(sheet.cells.get(address)).toEqual(cell);
  });

  it("can be undone without a trace", async () => {
    const { workbook, sheet } = bid();
    sheet.cells.set("F3", { fill: "#ff0000", numberFormat: "0%" });
    const before = stateOf(workbook);
    const undo = await hostOf(workbook).putCells(await patchOf(workbook));
    expect(sheet.cells.get("F3")?.numberFormat).toBe("#,##0.0");
    await undo();
    expect(stateOf(workbook)).toBe(before);
  });

  it("stay where somebody has edited one since", async () => {
    const { workbook, sheet } = bid();
    const undo = await hostOf(workbook).putCells(await patchOf(workbook));
    sheet.cells.set("F2", { formula: "mine" });
    const before = stateOf(workbook);
    await expect(undo()).rejects.toThrow('F2 on "Bid" has changed since; nothing was undone.');
    expect(stateOf(workbook)).toBe(before);
  });

  it.each(["a plain block", "a table"])(
    "of %s: the workbook is as it was, whichever operation fails",
    async (kind) => {
      const start = () => {
        const made = bid();
        if (kind === "a table") made.sheet.tables.push({ name: "Planes", address: "A1:D4" });
        if (kind === "a table") made.sheet.cells.set("F2", { fill: "#00ff00" });
        return made;
      };
      const patch = await patchOf(start().workbook);
      let failures = 0;
      for (let failAfter = 0; ; failAfter++) {
        const { workbook } = start();
        const before = stateOf(workbook);
        workbook.failAfter = failAfter;
        const done = await hostOf(workbook)
          .putCells(patch)
          .then(
            () => true,
            () => false,
          );
        if (done) break;
        failures++;
        expect(stateOf(workbook)).toBe(before);
      }
      expect(failures).toBeGreaterThan(8);
    },
  );

  it("undoes wholly or not at all, whichever operation fails", async () => {
    let failures = 0;
    for (let failAfter = 0; ; failAfter++) {
      const { workbook } = bid();
      const undo = await hostOf(workbook).putCells(await patchOf(workbook));
      const written = stateOf(workbook);
      workbook.failAfter = failAfter;
      const done = await undo().then(
        () => true,
        () => false,
      );
      if (done) break;
      failures++;
      expect(stateOf(workbook)).toBe(written);
    }
    expect(failures).toBeGreaterThan(2);
  });

  it("stay in a table to which somebody has added a row since", async () => {
    const { workbook, sheet } = bid();
    const table = { name: "Planes", address: "A1:D4" };
    sheet.tables.push(table);
    const undo = await hostOf(workbook).putCells(await patchOf(workbook));
    table.address = "A1:G5";
    const before = stateOf(workbook);
    await expect(undo()).rejects.toThrow("The table Planes has changed since; nothing was undone.");
    expect(stateOf(workbook)).toBe(before);
  });

  it("grow a table, and shrink it again", async () => {
    const { workbook, sheet } = bid();
    sheet.tables.push({ name: "Planes", address: "A1:D4" });
    const before = stateOf(workbook);
    const undo = await hostOf(workbook).putCells(await patchOf(workbook));
    expect(sheet.tables[0]?.address).toBe("A1:G4");
    await undo();
    expect(stateOf(workbook)).toBe(before);
  });
});

describe("rows filled as the others are in Excel, on a stand-in", () => {
  const gap: CellPatch = {
    sheet: "Bid",
    at: { row: 4, column: 4 },
    copyFormatsFrom: { row: 1 },
    cells: [[{ content: formula("=B5*2") }, { content: formula("=B5*3") }]],
  };
  const filled = () => {
    const made = bid();
    made.sheet.cells.set("E2", { formula: "=B2*2", numberFormat: "0.00", fill: "#abcdef" });
    made.sheet.cells.set("F2", { formula: "=B2*3", numberFormat: "#,##0" });
    return made;
  };

  it("look like the row above, column by column, and go away without a trace", async () => {
    const { workbook, sheet } = filled();
    const before = stateOf(workbook);
    const undo = await hostOf(workbook).putCells(gap);
    expect(sheet.cells.get("E5")).toEqual({ formula: "=B5*2", numberFormat: "0.00", fill: "#abcdef" });
    expect(sheet.cells.get("F5")).toEqual({ formula: "=B5*3", numberFormat: "#,##0" });
    await undo();
    expect(stateOf(workbook)).toBe(before);
  });

  it("keep their own look and number formats, and take those that they lack", async () => {
    const { workbook, sheet } = filled();
    sheet.cells.set("E5", { fill: "#ff0000" });
    sheet.cells.set("F5", { numberFormat: "0.0" });
    const before = stateOf(workbook);
    const undo = await hostOf(workbook).putCells(gap);
    expect(sheet.cells.get("E5")).toEqual({ formula: "=B5*2", numberFormat: "0.00", fill: "#ff0000" });
    expect(sheet.cells.get("F5")).toEqual({ formula: "=B5*3", numberFormat: "0.0" });
    await undo();
    expect(stateOf(workbook)).toBe(before);
  });
});

describe("a long write in Excel, on a stand-in", () => {
  const ROWS = 12_000;
  const patch: CellPatch = {
    sheet: "Bid",
    at: { row: 0, column: 5 },
    cells: Array.from({ length: ROWS }, (_, row) => [{ content: number(row), numberFormat: "0.0" }]),
  };
  const watched = (onProgress: (stop: AbortController) => void) => {
    const stop = new AbortController();
    return { onProgress: () => onProgress(stop), signal: stop.signal };
  };

  it.each(["F3", "F11000"])(
    "leaves alone what a person types into %s meanwhile, before it comes there, and writes nothing",
    async (address) => {
      const { workbook, sheet } = bid();
      const typed = { formula: "mine", numberFormat: "@" };
      const before = new Map(sheet.cells);
      workbook.onSync = () => {
        // All has been read, in three pieces, and nothing is written; or the first piece is.
        if (workbook.syncs === (address === "F3" ? 5 : 6)) sheet.cells.set(address, typed);
      };
      await expect(hostOf(workbook).putCells(patch)).rejects.toThrow(
        `${address} holds "mine". Nothing was written.`,
      );
      expect(sheet.cells).toEqual(new Map([...before, [address, typed]]));
    },
  );

  it("leaves what a person types meanwhile where it is canceled", async () => {
    const { workbook, sheet } = bid();
    const typed = { formula: "mine" };
    const before = new Map(sheet.cells);
    const run = watched((stop) => {
      sheet.cells.set("F10", typed);
      sheet.cells.set("F11000", typed);
      stop.abort(new Error("Canceled: nothing was written."));
    });
    await expect(hostOf(workbook).putCells(patch, run)).rejects.toThrow("Canceled");
    expect(sheet.cells).toEqual(new Map([...before, ["F10", typed], ["F11000", typed]]));
  });

  it("reports the progress of its Undo, which stops when canceled", async () => {
    const { workbook } = bid();
    const before = stateOf(workbook);
    const undo = await hostOf(workbook).putCells(patch);
    const written = stateOf(workbook);
    const run = watched((stop) => stop.abort(new Error("Canceled: what was written stays.")));
    await expect(undo(run)).rejects.toThrow("what was written stays");
    expect(stateOf(workbook)).toBe(written);
    const shares: number[] = [];
    await undo({ onProgress: (share) => shares.push(share), signal: new AbortController().signal });
    expect(shares.map((share) => Math.round(share * 100))).toEqual([33, 67, 100]);
    expect(stateOf(workbook)).toBe(before);
    // What was written, and what it is to be written over next.
    expect(workbook.mostCellsRead).toBeLessThanOrEqual(2 * 5_000);
  });
});

describe("what Excel refuses to take, on a stand-in", () => {
  const put = async (change: (sheet: FakeSheet) => void): Promise<string> => {
    const { workbook, sheet } = bid();
    const patch = await patchOf(workbook);
    change(sheet);
    const before = stateOf(workbook);
    const sentence = await hostOf(workbook)
      .putCells(patch)
      .then(
        () => "written",
        (failure: unknown) => (failure as Error).message,
      );
    expect(stateOf(workbook)).toBe(before);
    return sentence;
  };

  it("names the cells that hold something", async () => {
    const sentence = await put((sheet) => {
      sheet.cells.set("E3", { formula: "mine" });
      sheet.cells.set("G2", { formula: '=""', shows: "" });
    });
    expect(sentence).toBe('G2 holds "=""", E3 holds "mine". Nothing was written.');
  });

  it("names merged cells, another table, a protected sheet", async () => {
    expect(await put((sheet) => sheet.merged.push("F2:F3"))).toBe("F2:F3 is merged. Nothing was written.");
    expect(await put((sheet) => sheet.tables.push({ name: "Costs", address: "G1:H9" }))).toBe(
      "E1:G4 is in the table Costs. Nothing was written.",
    );
    expect(await put((sheet) => (sheet.isProtected = true))).toBe('"Bid" is protected. Nothing was written.');
  });

  it("never treats text as a formula", async () => {
    const { workbook, sheet } = bid();
    const risky = ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "6:12"];
    await hostOf(workbook).putCells({
      sheet: "Bid",
      at: { row: 9, column: 0 },
      cells: [
        [
          ...risky.map((each) => ({ content: text(each) })),
          { content: number(1) },
          { content: formula("=1") },
        ],
      ],
    });
    const written = [..."ABCDEFGHI"].map((letter) => sheet.cells.get(`${letter}10`)?.formula);
    expect(written).toEqual([...risky.map((each) => `'${each}`), 1, "=1"]);
  });
});

describe("what Excel's host surveys, on a stand-in", () => {
  it("reads cells, formulas, selection, table, merged cells, filter and hidden rows", async () => {
    const { workbook, sheet } = bid();
    workbook.selectedArea = "B2:C3";
    workbook.names.set("Panel", "Bid!$A$1:$B$2");
    sheet.tables.push({ name: "Planes", address: "A1:D4", isFiltered: true });
    sheet.merged.push("A1:B1");
    sheet.hiddenRows.push(2);
    expect(await hostOf(workbook).survey()).toMatchObject({
      sheet: "Bid",
      selected: { from: { row: 1, column: 1 }, to: { row: 2, column: 2 } },
      table: { name: "Planes", area: { from: { row: 0, column: 0 }, to: { row: 3, column: 3 } } },
      merged: [{ from: { row: 0, column: 0 }, to: { row: 0, column: 1 } }],
      isFiltered: true,
      isProtected: false,
      hiddenRows: [2],
      names: ["Panel"],
    });
    const { cells, formulas } = await hostOf(workbook).survey();
    expect([cells[2], formulas[3]]).toEqual([
      ["South", 20, "14 ft", 6],
      ["", "=SUM(B2:B3)", "", ""],
    ]);
  });

  it("reads a blank sheet", async () => {
    expect(await hostOf(fakeWorkbook("Bid")).survey()).toMatchObject({
      cells: [],
      merged: [],
      hiddenRows: [],
    });
  });
});

describe("repair, on a stand-in", () => {
  const lost = (value: string) => ({ formula: value, shows: "#NAME?" });

  it("enters formulas of ours again that show #NAME?, and no others", async () => {
    const { workbook, sheet } = bid();
    sheet.cells.set("F2", lost("=GABLE.COURSES(20,12)"));
    sheet.cells.set("F3", lost("=1+_xldudf_GABLE_COURSES(20,12)"));
    sheet.cells.set("F4", lost("=NOBODYS(1)"));
    const repaired = await hostOf(workbook).repair?.();
    expect(repaired).toMatchObject({ entered: 2, stillUnknown: 2, protectedSheets: [] });
    expect(["F2", "F3", "F4"].map((each) => sheet.cells.get(each)?.formula)).toEqual([
      "=GABLE.COURSES(20,12)",
      "=1+GABLE.COURSES(20,12)",
      "=NOBODYS(1)",
    ]);
    expect(workbook.calculations).toEqual(["Full"]);
    await repaired?.undo?.();
    expect(sheet.cells.get("F3")?.formula).toBe("=1+_xldudf_GABLE_COURSES(20,12)");
  });

  it("leaves alone what a person types into a lost cell, meanwhile or afterwards", async () => {
    const { workbook, sheet } = bid();
    for (const row of [2, 3]) sheet.cells.set(`F${row}`, lost("=1+_xldudf_GABLE_COURSES(20,12)"));
    const typed = { formula: 14 };
    const onProgress = (): void => void sheet.cells.set("F2", typed);
    const repaired = await hostOf(workbook).repair?.({ onProgress, signal: new AbortController().signal });
    expect(repaired?.entered).toBe(1);
    expect(sheet.cells.get("F2")).toEqual(typed);
    sheet.cells.set("F3", typed);
    await expect(repaired?.undo?.()).rejects.toThrow('F3 on "Bid" has changed since; nothing was undone.');
    expect(sheet.cells.get("F3")).toEqual(typed);
  });

  it("looks through a long sheet step by step, and enters nothing where that is canceled", async () => {
    const { workbook, sheet } = bid();
    sheet.cells.set("F2", lost("=GABLE.COURSES(20,12)"));
    sheet.cells.set("F9000", lost("=1+_xldudf_GABLE_COURSES(20,12)"));
    const before = JSON.stringify([...sheet.cells]);
    const stop = new AbortController();
    const shares: number[] = [];
    const onProgress = (share: number): void => {
      shares.push(share);
      if (share > 0.5) stop.abort(new Error("Canceled: nothing was entered."));
    };
    await expect(hostOf(workbook).repair?.({ onProgress, signal: stop.signal })).rejects.toThrow("Canceled");
    expect(shares.length).toBeGreaterThan(2);
    expect(JSON.stringify([...sheet.cells])).toBe(before);
    expect(await hostOf(workbook).repair?.()).toMatchObject({ entered: 2 });
  });

  describe("of many cells", () => {
    const AS_SAVED = "=1+_xldudf_GABLE_COURSES(20,12)";
    const AS_ENTERED = "=1+GABLE.COURSES(20,12)";
    const COUNT = 3_000;
    const many = () => {
      const { workbook, sheet } = bid();
      for (let row = 1; row <= COUNT; row++) sheet.cells.set(`F${row}`, lost(AS_SAVED));
      return { workbook, sheet, before: JSON.stringify([...sheet.cells]) };
    };
    const formulaAt = (sheet: FakeSheet, address: string): unknown => sheet.cells.get(address)?.formula;

    it("goes on in pieces, and calculates once", async () => {
      const { workbook, sheet, before } = many();
      const shares: number[] = [];
      const repaired = await hostOf(workbook).repair?.({
        onProgress: (share) => shares.push(share),
        signal: new AbortController().signal,
      });
      expect(repaired).toMatchObject({ entered: COUNT, stillUnknown: COUNT });
      expect(formulaAt(sheet, `F${COUNT}`)).toBe(AS_ENTERED);
      expect(workbook.calculations).toEqual(["Full"]);
      expect(workbook.mostCellsRead).toBeLessThanOrEqual(5_000);
      const entering = shares.filter((share) => share > 0.5);
      expect(entering.length).toBeGreaterThan(2);
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
      expect(shares.at(-1)).toBe(1);
      await repaired?.undo?.();
      expect(JSON.stringify([...sheet.cells])).toBe(before);
    });

    it("brings back what it has entered where it is canceled meanwhile, but for what a person has typed", async () => {
      const { workbook, sheet } = many();
      const stop = new AbortController();
      const typed = { formula: 14 };
      const onProgress = (share: number): void => {
        if (share <= 0.5) return;
        sheet.cells.set("F2", typed);
        sheet.cells.set(`F${COUNT}`, typed);
        stop.abort(new Error("Canceled: nothing was entered."));
      };
      await expect(hostOf(workbook).repair?.({ onProgress, signal: stop.signal })).rejects.toThrow(
        "Canceled",
      );
      expect(workbook.calculations).toEqual([]);
      expect(["F1", "F2", "F3", `F${COUNT}`].map((each) => formulaAt(sheet, each))).toEqual([
        AS_SAVED,
        14,
        AS_SAVED,
        14,
      ]);
    });

    it("can be canceled before anything is entered, and while Excel calculates", async () => {
      // Once everything was looked through; once everything was entered.
      for (const at of [0.5, 1]) {
        const { workbook, sheet, before } = many();
        const stop = new AbortController();
        const onProgress = (share: number): void => {
          if (share === at) stop.abort(new Error("Canceled: nothing was entered."));
        };
        await expect(hostOf(workbook).repair?.({ onProgress, signal: stop.signal })).rejects.toThrow(
          "Canceled",
        );
        expect(JSON.stringify([...sheet.cells])).toBe(before);
      }
    });

    it("can be undone again where that failed on its way", async () => {
      const { workbook, sheet, before } = many();
      const repaired = await hostOf(workbook).repair?.();
      // Far enough to have brought back some, and not all.
      workbook.failAfter = 2 * COUNT + 1_500;
      await expect(repaired?.undo?.()).rejects.toThrow("failed as it was told");
      expect([formulaAt(sheet, "F1"), formulaAt(sheet, `F${COUNT}`)]).toEqual([AS_SAVED, AS_ENTERED]);
      await repaired?.undo?.();
      expect(JSON.stringify([...sheet.cells])).toBe(before);
    });

    it("names the sheet of a cell that has changed since", async () => {
      const { workbook, sheet } = many();
      const other = workbook.sheets[1] as FakeSheet;
      other.cells.set("B2", lost(AS_SAVED));
      const repaired = await hostOf(workbook).repair?.();
      other.cells.set("B2", { formula: 3 });
      await expect(repaired?.undo?.()).rejects.toThrow(
        'B2 on "Other" has changed since; nothing was undone.',
      );
      expect(formulaAt(sheet, "F1")).toBe(AS_ENTERED);
    });
  });

  it("puts back what it entered where Excel fails on the way", async () => {
    const { workbook, sheet } = bid();
    for (const row of [2, 3, 4]) sheet.cells.set(`F${row}`, lost("=1+_xldudf_GABLE_COURSES(20,12)"));
    const before = JSON.stringify([...sheet.cells]);
    for (let operations = 0; ; operations++) {
      workbook.failAfter = operations;
      const failed = await hostOf(workbook)
        .repair?.()
        .then(
          () => false,
          () => true,
        );
      if (!failed) break;
      expect(JSON.stringify([...sheet.cells])).toBe(before);
    }
    expect(sheet.cells.get("F4")?.formula).toBe("=1+GABLE.COURSES(20,12)");
  });

  it("leaves protected sheets alone and says so, and does nothing where nothing is lost", async () => {
    const { workbook, sheet } = bid();
    expect(await hostOf(workbook).repair?.()).toEqual({ entered: 0, stillUnknown: 0, protectedSheets: [] });
    sheet.cells.set("F2", lost("=GABLE.COURSES(20,12)"));
    sheet.isProtected = true;
    expect(await hostOf(workbook).repair?.()).toEqual({
      entered: 0,
      stillUnknown: 0,
      protectedSheets: ["Bid"],
    });
    expect(workbook.calculations).toEqual([]);
  });
});
