import type { RTree } from "@univerjs/core";
import { IDependencyManagerService } from "@univerjs/engine-formula";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { engineWithout } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

jest.setTimeout(60_000);

const ROWS = 20;

const opened = async (create = createHeadlessEngine): Promise<HeadlessEngine> => {
  const cells = [
    ...Array.from({ length: ROWS }, (_, row) => ({ row, column: 0, content: row + 1 })),
    { row: 0, column: 1, content: `=SUM(A1:A${ROWS})` },
    { row: 1, column: 1, content: "=SUM(A1:A3)+MAX(A4:A9)" },
    { row: 2, column: 1, content: "=B1+B2" },
  ];
  const sheets = [
    { name: "Bid", cells },
    { name: "Other", cells: [{ row: 0, column: 0, content: "=SUM(Bid!A1:A3)" }] },
  ];
  const engine = create(fakeCatalog, planOf({ sheets, names: [] }));
  await engine.calculated();
  return engine;
};

/** How many ranges of several cells the engine has registered on the sheet Bid. */
const registeredRanges = (engine: HeadlessEngine, service = IDependencyManagerService): number => {
  const manager = engine.injector.get(service) as unknown as {
    _dependencyRTreeCache: RTree;
  };
  const sheetId = engine.workbook.getSheetBySheetName("Bid")?.getSheetId() ?? "";
  return manager._dependencyRTreeCache.getTree(engine.workbook.getUnitId(), sheetId).all().length;
};

const shown = (engine: HeadlessEngine) => [
  ...[0, 1, 2].map((row) => engine.getCell({ sheet: "Bid", row, column: 1 })),
  engine.getCell({ sheet: "Other", row: 0, column: 0 }),
];

const edit = async (engine: HeadlessEngine, row: number, column: number, content: number | string) => {
  engine.setCell({ sheet: "Bid", row, column }, content);
  await engine.calculated();
};

describe("the ranges that formulas read", () => {
  it("are registered once, no matter how often a cell is edited", async () => {
    const engine = await opened();
    const before = registeredRanges(engine);
    expect(before).toBe(4);
    for (let value = 1; value <= 12; value++) await edit(engine, 0, 0, value);
    expect(registeredRanges(engine)).toBe(before);
    expect(shown(engine)).toEqual([221, 26, 247, 17]);
    engine.dispose();
  });

  it("are updated when a formula reads others", async () => {
    const engine = await opened();
    await edit(engine, 0, 1, "=SUM(A10:A12)");
    expect(shown(engine)).toEqual([33, 15, 48, 6]);
    await edit(engine, 10, 0, 111);
    expect(shown(engine)).toEqual([133, 15, 148, 6]);
    await edit(engine, 0, 0, 100);
    expect(shown(engine)).toEqual([133, 114, 247, 105]);
    await edit(engine, 1, 1, "text");
    await edit(engine, 1, 1, "=SUM(A1:A2)");
    await edit(engine, 1, 0, 50);
    expect(shown(engine)).toEqual([133, 150, 283, 153]);
    expect(registeredRanges(engine)).toBe(3);
    engine.dispose();
  });

  it("are registered again at every edit without the fix", async () => {
    const { createHeadlessEngine: create, formulaEngine } = engineWithout(
      "rangeDependencies",
      "registerRangesOnce",
    );
    const engine = await opened(create);
    const before = registeredRanges(engine, formulaEngine.IDependencyManagerService);
    await edit(engine, 0, 0, 1);
    expect(registeredRanges(engine, formulaEngine.IDependencyManagerService)).toBeGreaterThan(before);
    engine.dispose();
  });
});
