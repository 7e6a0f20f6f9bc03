import { ICommandService } from "@univerjs/core";
import { InsertColMutation, InsertRowMutation, RemoveRowMutation } from "@univerjs/sheets";
import ExcelJS from "exceljs";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { watchStructuralEdits } from "../../../src/hosts/local/engine/structuralEdits";
import { addressAfter } from "../../../src/xlsx/book/rowColumnMoves";
import { PackageDraft } from "../../../src/xlsx/package/packageDraft";
import { writeZip } from "../../../src/xlsx/package/zip";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { convert, describeWithLibreOffice } from "../../support/libreOffice";

const THREAD = "xl/threadedComments/threadedComment1.xml";
const VML = "xl/drawings/vmlDrawing1.vml";

/** A bid as another program writes one, with comments at B2 and C4, the second also as a conversation. */
const commented = async (changeVml = (vml: string): string => vml): Promise<Uint8Array> => {
  const workbook = new ExcelJS.Workbook();
  const bid = workbook.addWorksheet("Bid");
  bid.addRows([
    ["Item", "Feet", "Price"],
    ["eave", 40, 2.5],
    ["rake", 18.5, 3],
    ["ridge", 60, 4],
  ]);
  bid.getCell("B2").note = "measured twice";
  bid.getCell("C4").note = "ask the owner";
  const { parts } = openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer()));
  const draft = new PackageDraft(parts);
  draft.add(
    THREAD,
    "application/vnd.ms-excel.threadedcomments+xml",
    '<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="C4" id="{1}" personId="{2}"><text>ask the owner</text></threadedComment></ThreadedComments>',
  );
  draft.addRelationship("xl/worksheets/sheet1.xml", "threadedComment", THREAD);
  const changed = new Map(draft.result());
  changed.set(VML, new TextEncoder().encode(changeVml(new TextDecoder().decode(changed.get(VML)))));
  return writeZip(changed);
};

interface Lines {
  readonly id: string;
  readonly range: { startRow: number; endRow: number; startColumn: number; endColumn: number };
}

const rows = (id: string, startRow: number, endRow = startRow): Lines => ({
  id,
  range: { startRow, endRow, startColumn: 0, endColumn: 25 },
});

const FIRST_COLUMN: Lines = {
  id: InsertColMutation.id,
  range: { startRow: 0, endRow: 60, startColumn: 0, endColumn: 0 },
};

/** The file as it is saved once rows and columns were put in or taken out. */
const savedAfter = async (bytes: Uint8Array, ...steps: readonly Lines[]): Promise<Uint8Array> => {
  const file = openXlsx(bytes);
  const engine = createHeadlessEngine(localCatalog, file.book);
  await engine.calculated();
  const calculated = engine.book();
  const commands = engine.injector.get(ICommandService);
  const moves = watchStructuralEdits(commands);
  const subUnitId = engine.workbook.getSheetBySheetName("Bid")?.getSheetId() ?? "";
  for (const { id, range } of steps)
    commands.syncExecuteCommand(id, { unitId: engine.workbook.getUnitId(), subUnitId, range });
  const movesBySheet = new Map([["Bid", moves().get(subUnitId) ?? []]]);
  const saved = saveXlsx({ file, calculated }, engine.book(), { movesBySheet });
  engine.dispose();
  return saved;
};

const partText = (bytes: Uint8Array, path: string): string =>
  new TextDecoder().decode(openXlsx(bytes).parts.get(path));

const notes = async (bytes: Uint8Array): Promise<Record<string, string>> => {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(new Uint8Array(bytes).buffer);
  const found: Record<string, string> = {};
  workbook.getWorksheet("Bid")?.eachRow((row) => {
    row.eachCell(({ address, note }) => {
      if (note)
        found[address] =
          typeof note === "string" ? note : (note.texts ?? []).map(({ text }) => text).join("");
    });
  });
  return found;
};

const boxes = (bytes: Uint8Array): string[] =>
  [...partText(bytes, VML).matchAll(/<x:Row>(\d+)<\/x:Row>\s*<x:Column>(\d+)</g)].map(
    ([, row, column]) => `${row},${column}`,
  );

const anchors = (bytes: Uint8Array): number[][] =>
  [...partText(bytes, VML).matchAll(/<x:Anchor>([^<]*)</g)].map(([, anchor = ""]) =>
    anchor.split(",").map(Number),
  );

it("comments go down with their cells, with their boxes and conversations", async () => {
  const bytes = await commented();
  expect(boxes(bytes)).toEqual(["1,1", "3,2"]);
  const saved = await savedAfter(bytes, rows(InsertRowMutation.id, 2, 3), FIRST_COLUMN);
  expect(await notes(saved)).toEqual({ C2: "measured twice", D6: "ask the owner" });
  expect(boxes(saved)).toEqual(["1,2", "5,3"]);
  expect(partText(saved, THREAD)).toContain('ref="D6"');
  const [before = [], after = []] = [anchors(bytes)[1], anchors(saved)[1]];
  expect(after.map((part, at) => part - (before[at] ?? 0))).toEqual([1, 0, 2, 0, 1, 0, 2, 0]);
});

it("a comment is deleted with its row, and restored with it", async () => {
  const bytes = await commented();
  const saved = await savedAfter(bytes, rows(RemoveRowMutation.id, 3));
  expect(await notes(saved)).toEqual({ B2: "measured twice" });
  expect(boxes(saved)).toEqual(["1,1"]);
  expect(partText(saved, THREAD)).not.toContain("<threadedComment ");
});

it.each([
  ["a button beside them", (vml: string) => vml.replace('ObjectType="Note"', 'ObjectType="Button"')],
  ["an old drawing that isn't XML", (vml: string) => vml.replace("</xml>", "<br></xml>")],
])("saving is still refused with %s", async (_, change) => {
  await expect(savedAfter(await commented(change), rows(InsertRowMutation.id, 2))).rejects.toThrow(
    'rows, columns or cells were moved on "Bid", and these would not move with them: comments or form controls',
  );
});

test("a place after several moves, counted one after the other", () => {
  const moves = [
    { axis: "row", at: 2, count: 3 },
    { axis: "row", at: 4, count: -2 },
    { axis: "column", at: 0, count: 1 },
  ] as const;
  const rowAfter = (row: number) => addressAfter({ row, column: 0 }, moves)?.row;
  expect([0, 1, 2, 3].map(rowAfter)).toEqual([0, 1, undefined, 4]);
  expect(addressAfter({ row: 1, column: 0 }, [{ axis: "row", at: 0, count: -2 }])).toBeUndefined();
  expect(addressAfter({ row: 2, column: 0 }, [{ axis: "row", at: 0, count: -2 }])?.row).toBe(0);
});

describeWithLibreOffice("in LibreOffice", () => {
  it("comments stand at the cells that they went to", async () => {
    const saved = await savedAfter(await commented(), rows(InsertRowMutation.id, 2, 3), FIRST_COLUMN);
    expect(await notes(await convert(saved, "xlsx", "xlsx"))).toEqual({
      C2: "measured twice",
      D6: "ask the owner",
    });
  }, 60_000);
});
