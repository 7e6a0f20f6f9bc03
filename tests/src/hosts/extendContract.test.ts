import { excelHost } from "../../../src/hosts/excel/excelHost";
import type { Host } from "../../../src/workbook/host";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { readArea } from "../../../src/workbook/address";
import { panelSheet } from "../../../src/sheets/panelSheet";
import { formula, text, type WorkbookPlan } from "../../../src/workbook/plan";
import { extended } from "../../support/extended";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";
import { placeOf } from "../../support/place";
import { planOf } from "./local/planOf";

/** A host with a bid in it, and a person's hand on its cells. */
interface Tried {
  readonly host: Pick<Host, "survey" | "putCells">;
  type(address: string, content: string): void;
  dispose(): void;
}

const ROWS = [
  ["Plane", "Eave (ft)", "Slope (in)", "Pitch"],
  ["North", 30, 168, 6],
  ["South", 20, "14 ft", 6],
  ["Total", "=SUM(B2:B3)"],
];

const bid = (): WorkbookPlan => {
  const cells = ROWS.flatMap((line, row) => line.map((content, column) => ({ row, column, content })));
  const panel = panelSheet("Panel", {});
  const plan = planOf({ sheets: [{ name: "Bid", cells }], names: panel.names });
  return { ...plan, sheets: [...plan.sheets, panel.sheet] };
};

const inExcel = async (): Promise<Tried> => {
  const workbook = fakeWorkbook();
  const host = excelHost(fakeExcel(workbook), () =>
    Promise.reject(new Error("no picture was to be inserted")),
  );
  await host.addSheets(bid());
  return {
    host,
    type: (address, content) => workbook.sheets[0]?.cells.set(address, { formula: content }),
    dispose: () => undefined,
  };
};

const inLocalWorkbook = async (): Promise<Tried> => {
  const engine = createHeadlessEngine(localCatalog, bid());
  await engine.calculated();
  return {
    host: {
      survey: () => Promise.resolve(engine.survey("Bid", readArea("A1"))),
      putCells: async (patch) => engine.putCells(patch),
    },
    type: (address, content) => {
      engine.setCell({ sheet: "Bid", ...placeOf(address) }, content);
    },
    dispose: () => {
      engine.dispose();
    },
  };
};

const IDS = ["COURSES", "SQUARES", "TRIMFEET", "PITCHANGLE", "PANELCOUNT"];

describe.each([
  ["Excel, on a stand-in", inExcel],
  ["the local workbook", inLocalWorkbook],
])("extending a sheet in %s", (_, open) => {
  let tried: Tried;
  beforeEach(async () => {
    tried = await open();
  });
  afterEach(() => {
    tried.dispose();
  });

  /** The contents of the sheet as entered: formulas, and values where there is no formula. */
  const entered = async (): Promise<string> => {
    const { cells, formulas } = await tried.host.survey();
    const shown = cells.map((line, row) =>
      line.map((cell, column) => formulas[row]?.[column] || (cell ?? "")),
    );
    const withoutBlanks = shown.map((line) => line.slice(0, line.findLastIndex((cell) => cell !== "") + 1));
    return JSON.stringify(withoutBlanks.filter((line) => line.length > 0));
  };

  const patch = async () => extended(await tried.host.survey(), IDS);

  it("writes every cell of the patch and changes no other", async () => {
    const before = JSON.parse(await entered()) as unknown[][];
    const planned = await patch();
    await tried.host.putCells(planned);
    const { cells, formulas } = await tried.host.survey();
    planned.cells.forEach((line, row) => {
      line.forEach((cell, column) => {
        const at = [planned.at.row + row, planned.at.column + column] as const;
        if (cell?.content.kind === "formula") expect(formulas[at[0]]?.[at[1]]).toBe(cell.content.formula);
        if (cell?.content.kind === "text") expect(cells[at[0]]?.[at[1]]).toBe(cell.content.text);
        if (!cell) expect(cells[at[0]]?.[at[1]] ?? null).toBeNull();
      });
    });
    const after = JSON.parse(await entered()) as unknown[][];
    before.forEach((line, row) => expect(after[row]?.slice(0, line.length)).toEqual(line));
  });

  it("takes everything back", async () => {
    const before = await entered();
    const undo = await tried.host.putCells(await patch());
    expect(await entered()).not.toBe(before);
    await undo();
    expect(await entered()).toBe(before);
  });

  it("can write again after taking back, and not a second time over itself", async () => {
    const planned = await patch();
    await (
      await tried.host.putCells(planned)
    )();
    await tried.host.putCells(planned);
    await expect(tried.host.putCells(planned)).rejects.toThrow('E1 holds "Courses"');
  });

  it.each(["mine", "=1+1"])("refuses where a cell holds %s, and writes nothing", async (content) => {
    const planned = await patch();
    tried.type("F3", content);
    const before = await entered();
    await expect(tried.host.putCells(planned)).rejects.toThrow(/^F3 holds .*\. Nothing was written\.$/);
    expect(await entered()).toBe(before);
  });

  it.each([
    ["West", (holds: unknown) => holds === "North"],
    ["=1+1", (holds: unknown) => holds === "=SUM(B2:B3)"],
  ])("writes %s over what may be replaced, and over nothing else, and takes it back", async (typed, may) => {
    const before = await entered();
    const isFormula = typed.startsWith("=");
    const at = isFormula ? { row: 3, column: 1 } : { row: 1, column: 0 };
    const cells = [[{ content: isFormula ? formula(typed) : text(typed) }]];
    const put = (mayReplace?: (holds: unknown) => boolean) =>
      tried.host.putCells({ sheet: "Bid", at, cells, ...(mayReplace && { mayReplace }) });
    await expect(put()).rejects.toThrow("Nothing was written.");
    await expect(put((holds) => holds === "East")).rejects.toThrow("Nothing was written.");
    expect(await entered()).toBe(before);
    const undo = await put(may);
    expect(await entered()).toContain(`"${typed}"`);
    await undo();
    expect(await entered()).toBe(before);
  });

  it("undoes nothing if a cell has been edited since", async () => {
    const undo = await tried.host.putCells(await patch());
    tried.type("G2", "mine");
    const before = await entered();
    await expect(undo()).rejects.toThrow('G2 on "Bid" has changed since; nothing was undone.');
    expect(await entered()).toBe(before);
  });

  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"])("keeps the text %j text", async (risky) => {
    await tried.host.putCells({ sheet: "Bid", at: placeOf("A9"), cells: [[{ content: text(risky) }]] });
    const { cells: shown, formulas } = await tried.host.survey();
    expect([shown[8]?.[0], formulas[8]?.[0]]).toEqual([risky, ""]);
  });
});
