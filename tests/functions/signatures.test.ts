import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalog } from "../../functions/index";

/**
 * Formulas in people's workbooks call these by name and by the order of their parameters. A line may be added, and a parameter
 * that may be left out may come last, with a minor version; anything else breaks workbooks, and takes a major one.
 */
test("no function's name or parameters change by accident: signatures.txt says what was promised", () => {
  const promised = readFileSync(join(__dirname, "signatures.txt"), "utf8").trimEnd().split("\n");
  const now = catalog.map(
    ({ id, parameters }) =>
      `${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`,
  );
  expect(now.sort()).toEqual(promised);
});
