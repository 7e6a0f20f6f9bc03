import { ICommandService, type Univer } from "@univerjs/core";
import { ScrollToCellOperation } from "@univerjs/sheets";
import { InsertSheetDrawingCommand } from "@univerjs/sheets-drawing";
import { addPicture } from "../../../../../src/hosts/local/pictures/addPicture";
import { openedUniver } from "../openedUniver";
import { blankSheet } from "../../../../support/blankSheet";

const SVG = '<svg xmlns="http://www.w3.org/2000/svg"/>';

describe("a picture that is inserted on a sheet", () => {
  let univer: Univer;
  afterEach(() => {
    univer.dispose();
  });

  const put = async (onSheet: string): Promise<readonly unknown[]> => {
    const opened = openedUniver([blankSheet("Roof"), blankSheet("Bid")]);
    ({ univer } = opened);
    const { workbook, injector } = opened;
    const commands = injector.get(ICommandService);
    // Drawings need a screen; here every drawing is accepted.
    commands.registerCommand({ ...InsertSheetDrawingCommand, handler: () => true });
    const seen: unknown[] = [];
    commands.onCommandExecuted(({ id, params }) => {
      if (id === ScrollToCellOperation.id) seen.push(params);
    });
    const picture = { sheet: onSheet, at: { row: 40, column: 8 }, svg: SVG, widthPx: 200, heightPx: 100 };
    await addPicture(injector, workbook, picture);
    return seen;
  };

  it("scrolls into view, its first corner last", async () => {
    const seen = await put("Roof");
    expect(seen).toHaveLength(2);
    expect(seen[1]).toMatchObject({ range: { startRow: 40, startColumn: 8 } });
  });

  it("scrolls nothing if another sheet is active", async () => {
    expect(await put("Bid")).toEqual([]);
  });
});
