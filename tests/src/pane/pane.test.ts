/** @jest-environment jsdom */
import { h } from "preact";
import { Pane } from "../../../src/pane/Pane";
import type { PaneHost, WorkbookFiles } from "../../../src/pane/parts/paneHost";
import { press, seen, show } from "../../support/card";

const notHere = (): never => {
  throw new Error("nobody asks for this here");
};

const files: WorkbookFiles = {
  hasUnsaved: () => Promise.resolve(false),
  open: ({ name }) => Promise.resolve({ said: [`Opened ${name}.`], warnings: [] }),
  save: notHere,
  saveCsv: notHere,
  saveTable: notHere,
};

const host: PaneHost = {
  title: "a workbook of the test",
  files,
  existing: () => Promise.resolve({ sheets: [], names: [], activeSheetName: "" }),
  addSheets: () => Promise.resolve(() => Promise.resolve()),
  contents: () => Promise.resolve({ sheets: new Map(), targets: new Map() }),
  activeSheet: () => Promise.resolve({ sheet: "Bid", selected: { row: 0, column: 0 }, cells: [] }),
  watch: () => () => undefined,
  namedRange: notHere,
  putCells: notHere,
  putPicture: notHere,
  survey: notHere,
};

it("what was done in one workbook isn't offered for undoing beside the next one", async () => {
  const pane = show(h(Pane, { host }));
  press(pane, "Build takeoff");
  await seen(pane, "Added ");
  expect(pane.textContent).toContain("Undo");

  const field = pane.querySelector<HTMLInputElement>('[name="workbook-file"]');
  if (!field) throw new Error("there is no field for a file");
  Object.defineProperty(field, "files", { value: [new File(["x"], "bid.xlsx")] });
  field.dispatchEvent(new Event("change", { bubbles: true }));
  await seen(pane, "Opened bid.xlsx.");
  expect(pane.textContent).not.toMatch(/Added |Undo/);
});
