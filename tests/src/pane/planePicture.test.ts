/** @jest-environment jsdom */
import { TextEncoder } from "node:util";
import { h } from "preact";
import type { Cell } from "../../../shared/cell";
import type { Host, SheetPicture } from "../../../src/workbook/host";
import { PlanePicture } from "../../../src/pane/picture/PlanePicture";
import { fieldSheetPlan } from "../../../src/sheets/fieldSheet/fieldSheet";
import type { ActiveSheet } from "../../../src/workbook/activeSheet";
import type { CellPatch } from "../../../src/workbook/patch";
import { activePlane } from "../../../src/sheets/activeSheet/activePlane";
import { number, text } from "../../../src/workbook/plan";
import { press, seen, show } from "../../support/card";

// jsdom has none of its own.
Object.assign(globalThis, { TextEncoder });

const PANEL: Cell[][] = [
  ["exposed width", 24],
  ["exposed height", 12],
];

const fieldSheet = (): ActiveSheet => {
  const inputs = {
    plane: text("North"),
    shape: text("rectangle"),
    eave: number(30),
    slopeLength: number(6),
    start: text("right 5"),
  };
  const cells: Cell[][] = [];
  for (const { row, column, content } of fieldSheetPlan({ sheetName: "F", inputs, courses: 20 }).cells) {
    while (cells.length <= row) cells.push([]);
    const value =
      content?.kind === "text" ? content.text : content?.kind === "number" ? content.number : null;
    (cells[row] as Cell[])[column] = value;
  }
  return { sheet: "F", selected: { row: 0, column: 0 }, cells };
};

const notHere = (): never => {
  throw new Error("not to be asked here");
};

/** What is put on the sheet; a cell that is `occupied` takes nothing. */
const hand = (occupied = "") => {
  const pictures: SheetPicture[] = [];
  const patches: CellPatch[] = [];
  const undone: string[] = [];
  const host: Host = {
    title: "a hand",
    existing: notHere,
    activeSheet: notHere,
    contents: notHere,
    watch: notHere,
    addSheets: notHere,
    survey: notHere,
    namedRange: () => Promise.resolve(PANEL),
    putPicture: (picture) => {
      pictures.push(picture);
      return Promise.resolve(() => Promise.resolve(void undone.push("picture")));
    },
    putCells: (patch) => {
      if (occupied !== "") return Promise.reject(new Error(`J17 holds "${occupied}". Nothing was written.`));
      patches.push(patch);
      return Promise.resolve(() => Promise.resolve(void undone.push("cells")));
    },
  };
  return { host, pictures, patches, undone };
};

const shown = (host: Host): HTMLElement => {
  const view = fieldSheet();
  return show(h(PlanePicture, { host, view, plane: activePlane(view, new Map([["Panel", PANEL]])) }));
};

const written = (patch: CellPatch | undefined): string => JSON.stringify(patch?.cells);
const described = (svg = ""): string | undefined => {
  const box = document.createElement("div");
  box.innerHTML = svg;
  return box.querySelector("desc")?.textContent;
};

describe("a field sheet's picture", () => {
  it("is put as it is shown, with a line beneath, also with a start that was found; both are taken away", async () => {
    const { host, pictures, patches, undone } = hand();
    const card = shown(host);
    press(card, "Insert picture");
    await seen(card, 'The picture is on "F"');
    expect(described(pictures[0]?.svg)).toContain("from the right");
    expect(patches.map(({ at }) => at)).toEqual([{ row: 16, column: 9 }]);
    press(card, "Undo");
    await seen(card, "Undone: the picture was removed.");
    expect(undone).toEqual(["cells", "picture"]);

    press(card, "Find the best start");
    await seen(card, "Write this start into B10");
    const [, start = ""] = /Start "([^"]*)"/.exec(card.textContent) ?? [];
    expect(start).toMatch(/left|right/);
    press(card, "Insert picture");
    await seen(card, 'The picture is on "F"');
    expect(described(pictures[1]?.svg)).toBe(card.querySelector("desc")?.textContent);
    expect(pictures[1]?.svg.length).not.toBe(pictures[0]?.svg.length);
    expect(written(patches[1])).toContain(`Start ${start.replaceAll('"', '\\"\\"')}.`);
  });

  it("offers to write the start that was found into the sheet, and says over what", async () => {
    const { host, patches } = hand();
    const card = shown(host);
    press(card, "Find the best start");
    await seen(card, "Write this start into B10");
    const [, start = ""] = /Start "([^"]*)"/.exec(card.textContent) ?? [];
    press(card, 'Write this start into B10, replacing "right 5"');
    await seen(card, `B10 on "F" is now "${start}".`);
    expect(written(patches[0])).toBe(JSON.stringify([[{ content: text(start) }]]));
    expect(["right 5", "right", "=B9"].map((holds) => patches[0]?.mayReplace?.(holds))).toEqual([
      true,
      false,
      false,
    ]);
  });

  it("lies there without a line where the cell beneath holds something", async () => {
    const { host, pictures, undone } = hand("for Ann");
    const card = shown(host);
    press(card, "Insert picture");
    await seen(card, 'The caption below it was not written. J17 holds "for Ann". Nothing was written.');
    expect(pictures).toHaveLength(1);
    press(card, "Undo");
    await seen(card, "Undone: the picture was removed.");
    expect(undone).toEqual(["picture"]);
  });
});
