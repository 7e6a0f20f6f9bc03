import { excelHost } from "../../../../src/hosts/excel/excelHost";
import type { Host } from "../../../../src/workbook/host";
import { CellError } from "../../../../shared/cell";
import { addFieldSheet } from "../../../../src/sheets/fieldSheet/addFieldSheet";
import { addTakeoff, chooseSheetNames } from "../../../../src/sheets/newJob/addTakeoff";
import { DEMO_TAKEOFF } from "../../../../src/sheets/newJob/demoTakeoffs";
import { BLANK_TAKEOFF } from "../../../../src/sheets/takeoff/takeoffOptions";
import { takeoffPlan, USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import { a1 } from "../../../../src/workbook/address";
import { text, type SheetPlan, type WorkbookPlan } from "../../../../src/workbook/plan";
import {
  fakeExcel,
  fakeShape,
  fakeWorkbook,
  type FakeSheet,
  type FakeWorkbook,
} from "../../../support/fakeExcel";

const hostOf = (workbook: FakeWorkbook): Host =>
  excelHost(fakeExcel(workbook), () => Promise.reject(new Error("no picture was to be inserted")));

const stateOf = (workbook: FakeWorkbook): string =>
  JSON.stringify([
    workbook.sheets.map((sheet) => [sheet.id, sheet.name, [...sheet.cells]]),
    [...workbook.names],
    workbook.active,
  ]);

describe("the Excel host, on a stand-in", () => {
  it("writes every cell, name, format and drop-down of a plan", async () => {
    const workbook = fakeWorkbook("Bid");
    await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
    const plan = takeoffPlan(DEMO_TAKEOFF, USUAL_NAMES);
    expect(workbook.sheets.map(({ name }) => name)).toEqual([
      "Bid",
      "Takeoff",
      "Order",
      "Trim cuts",
      "Trims",
      "Panel",
    ]);
    expect(workbook.active).toBe("Takeoff");
    for (const sheetPlan of plan.sheets) {
      const sheet = workbook.sheets.find(({ name }) => name === sheetPlan.name);
      expect(sheet?.frozenRows).toBe(sheetPlan.frozenRows);
      for (const cell of sheetPlan.cells) {
        const written = sheet?.cells.get(a1(cell));
        if (cell.content?.kind === "formula") expect(written?.formula).toBe(cell.content.formula);
        if (cell.content?.kind === "number") expect(written?.formula).toBe(cell.content.number);
        if (cell.content?.kind === "text")
          expect(String(written?.formula).replace(/^'/, "")).toBe(cell.content.text);
        expect(written?.numberFormat).toBe(cell.numberFormat);
        expect(written?.choices).toBe(cell.choices?.join(","));
      }
    }
    expect([...workbook.names.keys()].sort()).toEqual(plan.names.map(({ name }) => name).sort());
    expect(workbook.names.get("Panel")).toMatch(/^Panel!\$A\$4:\$B\$\d+$/);
  });

  /** Writes a plan again and again, each time failing later, until nothing fails any more; returns how often it failed. */
  const failAtEvery = async (step: number, plan: WorkbookPlan): Promise<number> => {
    for (let failures = 0; ; failures++) {
      const workbook = fakeWorkbook("Bid", "Takeoff");
      workbook.sheets[1]?.cells.set("A1", { formula: "mine" });
      const before = stateOf(workbook);
      workbook.failAfter = failures * step;
      const failed = await hostOf(workbook)
        .addSheets(plan)
        .then(
          () => false,
          () => true,
        );
      if (!failed) return failures;
      expect(stateOf(workbook)).toBe(before);
    }
  };

  const names = chooseSheetNames({ sheets: ["Bid", "Takeoff"], names: [] }, false);
  const takeoff = takeoffPlan(BLANK_TAKEOFF, names);

  it("leaves the workbook as it was, whichever operation fails", async () => {
    const firstRows = (sheet: SheetPlan): SheetPlan => ({
      ...sheet,
      cells: sheet.cells.filter(({ row }) => row < 8),
    });
    const beginnings = { ...takeoff, sheets: takeoff.sheets.map(firstRows) };
    expect(await failAtEvery(1, beginnings)).toBeGreaterThan(400);
  });

  it("leaves the workbook as it was, however far a whole takeoff was written", async () => {
    expect(await failAtEvery(101, takeoff)).toBeGreaterThan(20);
  });

  it("never lets text become a formula, a date or a number", async () => {
    const workbook = fakeWorkbook();
    const risky = ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "6:12", "1/2", "007", "TRUE"];
    await hostOf(workbook).addSheets({
      names: [],
      sheets: [
        {
          name: "Notes",
          frozenRows: 0,
          columnWidths: [],
          rowHeights: {},
          cells: risky.map((each, row) => ({ row, column: 0, content: text(each) })),
        },
      ],
    });
    expect([...(workbook.sheets[0]?.cells.values() ?? [])].map(({ formula }) => formula)).toEqual(
      risky.map((each) => `'${each}`),
    );
  });
});

describe("what the Excel host reads", () => {
  it("reads the active sheet from its first cell, errors as errors", async () => {
    const workbook = fakeWorkbook("Bid");
    workbook.sheets[0]?.cells.set("B3", { formula: 30 });
    workbook.sheets[0]?.cells.set("C4", { formula: "#DIV/0!" });
    workbook.selected = { rowIndex: 3, columnIndex: 2 };
    expect(await hostOf(workbook).activeSheet()).toEqual({
      sheet: "Bid",
      selected: { row: 3, column: 2 },
      cells: [[], [], [null, 30, null], [null, null, new CellError("#DIV/0!", "")]],
    });
  });

  it("gives the cells of a name, and none for a name that isn't there", async () => {
    const workbook = fakeWorkbook("Bid");
    await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
    const panel = await hostOf(workbook).namedRange("Panel");
    expect(panel?.[0]).toEqual(["exposed width", 24]);
    expect(await hostOf(workbook).namedRange("Nothing")).toBeUndefined();
  });

  describe("deletes built sheets", () => {
    const NAMES = ["Bid", "Takeoff", "Order", "Trim cuts", "Trims", "Panel"];

    it("together with their names", async () => {
      const workbook = fakeWorkbook("Bid");
      const { undo } = await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
      expect(workbook.sheets.map(({ name }) => name)).toEqual(NAMES);
      await undo();
      expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid"]);
      expect([...workbook.names.keys()]).toEqual([]);
    });

    it("but not where somebody has typed on them since", async () => {
      const workbook = fakeWorkbook("Bid");
      const { undo } = await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
      const takeoff = workbook.sheets.find(({ name }) => name === "Takeoff");
      takeoff?.cells.set("C7", { formula: 61 });
      await expect(undo()).rejects.toThrow(
        'C7 on "Takeoff" has changed since it was built. Nothing was undone.',
      );
      expect(workbook.sheets.map(({ name }) => name)).toEqual(NAMES);
    });

    it("nor where they are all that the workbook has", async () => {
      const workbook = fakeWorkbook("Bid");
      const { undo } = await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
      workbook.sheets.shift();
      const before = stateOf(workbook);
      await expect(undo()).rejects.toThrow("it must keep one. Nothing was undone.");
      expect(stateOf(workbook)).toBe(before);
    });

    it.each(["='Takeoff'!K11", "=Takeoff!K11*2", "=ExposedHeight/12"])(
      "nor where %s stands on another sheet",
      async (formula) => {
        const workbook = fakeWorkbook("Bid");
        const { undo } = await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
        workbook.sheets[0]?.cells.set("B2", { formula });
        await expect(undo()).rejects.toThrow(
          'B2 on "Bid" refers to a sheet or name that would be removed. Nothing was undone.',
        );
        expect(workbook.sheets.map(({ name }) => name)).toEqual(NAMES);
      },
    );
  });

  it("keeps built sheets that a name of the user's refers to", async () => {
    const workbook = fakeWorkbook("Bid");
    const { undo } = await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
    const before = stateOf(workbook);
    const refusedWith = async (): Promise<string> => {
      const state = stateOf(workbook);
      const sentence = await undo().then(String, ({ message }: Error) => message);
      expect(stateOf(workbook)).toBe(state);
      return sentence;
    };
    workbook.names.set("RoofArea", "Takeoff!$K$11");
    expect(await refusedWith()).toBe(
      'The name "RoofArea" refers to a sheet or name that would be removed. Nothing was undone.',
    );
    workbook.names.delete("RoofArea");
    const [bid] = workbook.sheets as [FakeSheet];
    bid.names = { RoofArea: "='Takeoff'!$K$11" };
    expect(await refusedWith()).toBe(
      "The name \"'Bid'!RoofArea\" refers to a sheet or name that would be removed. Nothing was undone.",
    );
    bid.names = {};
    expect(stateOf(workbook)).toBe(before);
    await undo();
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid"]);
  });

  it("leaves alone a workbook whose own Trims are no table of ours", async () => {
    const workbook = fakeWorkbook("Bid");
    workbook.names.set("Trims", "Bid!$A$1:$B$4");
    await expect(addTakeoff(hostOf(workbook), DEMO_TAKEOFF)).rejects.toThrow(
      "This workbook uses the name Trims for something else.",
    );
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid"]);
  });

  it("shares the table of trims between two takeoffs", async () => {
    const workbook = fakeWorkbook("Bid");
    await addTakeoff(hostOf(workbook), DEMO_TAKEOFF);
    expect((await addTakeoff(hostOf(workbook), BLANK_TAKEOFF)).sheets).toEqual([
      "Takeoff 2",
      "Order 2",
      "Trim cuts 2",
    ]);
  });

  it("builds a field sheet that leads to the takeoff, printed on one page", async () => {
    const workbook = fakeWorkbook("Bid");
    const host = hostOf(workbook);
    await addTakeoff(host, DEMO_TAKEOFF);
    workbook.selected = { rowIndex: 7, columnIndex: 0 };
    expect((await addFieldSheet(host)).sheets).toEqual(["Field South"]);
    const sheet = workbook.sheets.find(({ name }) => name === "Field South");
    expect(sheet?.cells.get("B6")?.formula).toBe("=IF(LEN('Takeoff'!C8)=0,\"\",'Takeoff'!C8)");
    expect(sheet?.print).toEqual({
      orientation: "Landscape",
      zoom: { horizontalFitToPages: 1, verticalFitToPages: 1 },
    });
  });
});

describe("a sheet of many cells", () => {
  const ROWS = 6_000;
  /** As many as Excel is asked for at once. */
  const AT_ONCE = 5_000;
  const long = () => {
    const workbook = fakeWorkbook("Bid", "Blank", "Other");
    const [bid, , other] = workbook.sheets as [FakeSheet, FakeSheet, FakeSheet];
    for (let row = 2; row <= ROWS; row++) {
      bid.cells.set(`B${row}`, { formula: row });
      bid.cells.set(`C${row}`, { formula: `=B${row}*2`, shows: row * 2 });
    }
    bid.hiddenRows = [4_999];
    other.cells.set("A1", { formula: "Eave" });
    workbook.names.set("Slopes", `Bid!$B$2:$B$${ROWS}`);
    return { workbook, bid, other, host: hostOf(workbook) };
  };

  it("is read whole, in pieces", async () => {
    const { workbook, host } = long();
    const { sheets } = await host.contents();
    expect([...sheets.keys()]).toEqual(["Bid", "Blank", "Other"]);
    const bid = sheets.get("Bid");
    expect(bid?.cells).toHaveLength(ROWS);
    expect(bid?.cells.at(-1)).toEqual([null, ROWS, ROWS * 2]);
    expect(bid?.formulas.at(-1)).toEqual(["", "", `=B${ROWS}*2`]);
    expect(sheets.get("Other")?.cells).toEqual([["Eave"]]);
    expect((await host.activeSheet()).cells).toEqual(bid?.cells);
    expect((await host.namedRange("Slopes"))?.flat()).toEqual(
      Array.from({ length: ROWS - 1 }, (_, row) => row + 2),
    );
    const survey = await host.survey();
    expect(survey).toMatchObject({ cells: bid?.cells, formulas: bid?.formulas, hiddenRows: [4_999] });
    expect(workbook.mostCellsRead).toBeGreaterThan(AT_ONCE / 2);
    expect(workbook.mostCellsRead).toBeLessThanOrEqual(AT_ONCE);
  });

  it("is looked through in pieces where built sheets are to go", async () => {
    const { workbook, bid, host } = long();
    const { undo } = await addTakeoff(host, DEMO_TAKEOFF);
    bid.cells.set(`C${ROWS}`, { formula: "='Takeoff'!K11" });
    await expect(undo()).rejects.toThrow(
      `C${ROWS} on "Bid" refers to a sheet or name that would be removed.`,
    );
    bid.cells.delete(`C${ROWS}`);
    await undo();
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid", "Blank", "Other"]);
    expect(workbook.mostCellsRead).toBeLessThanOrEqual(AT_ONCE);
  });

  it("isn't begun where a cell far off makes it vast", async () => {
    const { other, host } = long();
    other.cells.set("XFD1048576", { formula: 1 });
    await expect(host.contents()).rejects.toThrow('"Other" is used as far as XFD1048576, which is too much');
    expect((await host.activeSheet()).sheet).toBe("Bid");
    const { undo } = await addTakeoff(host, DEMO_TAKEOFF);
    await expect(undo()).rejects.toThrow('"Other" is used as far as XFD1048576');
  });
});

describe("a picture put on one of Excel's sheets", () => {
  const PICTURE = { sheet: "Bid", at: { row: 2, column: 9 }, svg: "<svg/>", widthPx: 400, heightPx: 200 };
  const IN_POINTS = { width: 300, height: 150 };
  /** Where the stand-in has every cell. */
  const CORNER = { left: 100, top: 50 };

  /** A workbook with a chart on it, and a host whose pictures lie where the selection is, as Excel's do. */
  const withChart = () => {
    const workbook = fakeWorkbook("Bid", "Other");
    const [bid, other] = workbook.sheets as [FakeSheet, FakeSheet];
    bid.shapes = [fakeShape("their chart")];
    /** What a person does just before Excel takes the picture. */
    const meanwhile: (() => void)[] = [];
    let pictures = 0;
    const host = excelHost(fakeExcel(workbook), async (_svg, size) => {
      meanwhile.shift()?.();
      const id = `picture ${++pictures}`;
      // Excel takes its time.
      await new Promise((resolve) => setTimeout(resolve, 5));
      workbook.sheets.find(({ name }) => name === workbook.active)?.shapes.push(fakeShape(id, size));
    });
    return { workbook, bid, other, meanwhile, host };
  };
  const idsOn = ({ shapes }: FakeSheet): string[] => shapes.map(({ id }) => id);

  it("lies at a cell's corner, in points, and that one goes away again", async () => {
    const { bid, host } = withChart();
    const undo = await host.putPicture(PICTURE);
    expect(bid.shapes).toEqual([fakeShape("their chart"), { id: "picture 1", ...IN_POINTS, ...CORNER }]);
    bid.shapes.push(fakeShape("their arrow"));
    await undo();
    expect(idsOn(bid)).toEqual(["their chart", "their arrow"]);
  });

  it("goes away by itself where another was put right after it, whichever goes first", async () => {
    for (const isFirst of [true, false]) {
      const { bid, host } = withChart();
      const [first, second] = await Promise.all([host.putPicture(PICTURE), host.putPicture(PICTURE)]);
      expect(idsOn(bid)).toEqual(["their chart", "picture 1", "picture 2"]);
      await (isFirst ? first : second)();
      expect(idsOn(bid)).toEqual(["their chart", isFirst ? "picture 2" : "picture 1"]);
      await (isFirst ? second : first)();
      expect(idsOn(bid)).toEqual(["their chart"]);
    }
  });

  it("is put though the one before it wasn't taken", async () => {
    const { bid, meanwhile, host } = withChart();
    meanwhile.push(() => {
      throw new Error("Excel is busy.");
    });
    const [first, second] = await Promise.allSettled([host.putPicture(PICTURE), host.putPicture(PICTURE)]);
    expect([first.status, second.status]).toEqual(["rejected", "fulfilled"]);
    expect(idsOn(bid)).toEqual(["their chart", "picture 1"]);
  });

  it("comes to the sheet that it was asked for though another came to the front, and goes from there", async () => {
    const { workbook, bid, other, meanwhile, host } = withChart();
    meanwhile.push(() => (workbook.active = "Other"));
    const undo = await host.putPicture(PICTURE);
    expect(other.shapes).toEqual([]);
    expect(bid.shapes).toEqual([
      fakeShape("their chart"),
      { id: expect.stringContaining("copied") as string, ...IN_POINTS, ...CORNER },
    ]);
    await undo();
    expect(idsOn(bid)).toEqual(["their chart"]);
  });

  it("is told from what a person draws at the same moment", async () => {
    const { bid, other, meanwhile, host } = withChart();
    meanwhile.push(() => {
      bid.shapes.push(fakeShape("their arrow"));
      other.shapes.push(fakeShape("their box"));
    });
    const undo = await host.putPicture(PICTURE);
    expect(idsOn(bid)).toEqual(["their chart", "their arrow", "picture 1"]);
    await undo();
    expect(idsOn(bid)).toEqual(["their chart", "their arrow"]);
    expect(idsOn(other)).toEqual(["their box"]);
  });

  it("is left where it can't be told from another of its size", async () => {
    const { bid, meanwhile, host } = withChart();
    meanwhile.push(() => bid.shapes.push(fakeShape("their copy", IN_POINTS)));
    await expect(host.putPicture(PICTURE)).rejects.toThrow(
      /^Another shape .* doesn't say which one is the picture. .* was\.$/,
    );
    expect(idsOn(bid)).toEqual(["their chart", "their copy", "picture 1"]);
  });

  it("is deleted with its sheet", async () => {
    const { workbook, host } = withChart();
    const undo = await host.putPicture(PICTURE);
    workbook.sheets.shift();
    await undo();
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Other"]);
  });

  it.each(["Bid", "Other"])(
    "leaves no trace where Excel fails on the way, with %s in front",
    async (inFront) => {
      const { workbook, bid, other, meanwhile, host } = withChart();
      const putFailsAfter = async (operations: number): Promise<boolean> => {
        meanwhile.splice(0, 1, () => (workbook.active = inFront));
        workbook.failAfter = operations;
        return host.putPicture(PICTURE).then(
          () => false,
          () => true,
        );
      };
      let operations = 0;
      while (await putFailsAfter(operations++))
        expect([idsOn(bid), idsOn(other)]).toEqual([["their chart"], []]);
      expect(operations).toBeGreaterThan(6);
      expect([bid.shapes.length, other.shapes.length]).toEqual([2, 0]);
    },
  );
});

describe("names of new sheets", () => {
  it("refuses a second footprint in a workbook", () => {
    expect(() => chooseSheetNames({ sheets: [], names: ["Footprint"] }, true)).toThrow(
      "a workbook has only one footprint",
    );
  });

  it("steps aside for sheets that are there, letter case aside", () => {
    expect(chooseSheetNames({ sheets: ["takeoff", "Takeoff 2"], names: [] }, false)).toEqual({
      takeoff: "Takeoff 3",
      order: "Order",
      cuts: "Trim cuts",
      trims: "Trims",
      panel: "Panel",
      roof: "Roof",
    });
  });

  it("uses the panel sheet and the table of trims that a workbook has", () => {
    const names = takeoffPlan(BLANK_TAKEOFF, USUAL_NAMES).names.map(({ name }) => name);
    expect(chooseSheetNames({ sheets: ["Panel"], names }, false)).toEqual({
      takeoff: "Takeoff",
      order: "Order",
      cuts: "Trim cuts",
      trims: undefined,
      panel: undefined,
      roof: "Roof",
    });
  });

  it("refuses a workbook in which a name means something else", () => {
    expect(() => chooseSheetNames({ sheets: [], names: ["TRIMLAP"] }, false)).toThrow(
      "This workbook uses the name TrimLap for something else.",
    );
  });
});
