import { workbookTitle } from "../../../../../src/hosts/local/files/workbookTitle";
import { bookOf } from "../../../xlsx/bookOf";

test.each([
  ["its job", "Roof takeoff: Barn, north yard", "Barn, north yard"],
  ["its first sheet, where there is no job", "Roof takeoff", bookOf({}).sheets[0]?.name],
])("a workbook without a file is called by %s", (_, cell, title) => {
  expect(workbookTitle(bookOf({ A1: { value: cell } }))).toBe(title);
});
