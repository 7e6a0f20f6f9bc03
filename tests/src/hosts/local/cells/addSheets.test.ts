import { ICommandService } from "@univerjs/core";
import { InsertDefinedNameCommand, RemoveDefinedNameCommand } from "@univerjs/sheets";
import { addSheets } from "../../../../../src/hosts/local/cells/addSheets";
import { definedNamesIn } from "../../../../../src/hosts/local/engine/definedNames";
import { text, type SheetPlan, type WorkbookPlan } from "../../../../../src/workbook/plan";
import { openedUniver } from "../openedUniver";

const sheet = (name: string): SheetPlan => ({
  name,
  cells: [{ row: 0, column: 0, content: text("Roof") }],
  columnWidths: [],
  rowHeights: {},
  frozenRows: 0,
});

const PANEL: WorkbookPlan = {
  sheets: [sheet("Panel")],
  names: [{ name: "HeadLap", sheet: "Panel", range: "$A$1" }],
};

describe("sheets that were added to the local workbook, undone", () => {
  it("stay while a name that was defined later refers to them, and are removed once it is deleted", async () => {
    const { univer, workbook, injector } = openedUniver([sheet("Bid")]);
    const sheets = (): string[] => workbook.getSheets().map((each) => each.getName());
    const undo = await addSheets(injector, workbook, PANEL);
    const theirs = { unitId: "bid", id: "theirs", name: "Eave", formulaOrRefString: "Panel!$A$1" };
    const commands = injector.get(ICommandService);
    await commands.executeCommand(InsertDefinedNameCommand.id, theirs);
    const before = definedNamesIn(injector, workbook);

    await expect(undo()).rejects.toThrow(
      'The name "Eave" refers to a sheet or name that would be removed. Nothing was undone.',
    );
    expect(sheets()).toEqual(["Bid", "Panel"]);
    expect(definedNamesIn(injector, workbook)).toEqual(before);

    await commands.executeCommand(RemoveDefinedNameCommand.id, theirs);
    await undo();
    expect(sheets()).toEqual(["Bid"]);
    expect(definedNamesIn(injector, workbook)).toEqual([]);
    univer.dispose();
  });
});
