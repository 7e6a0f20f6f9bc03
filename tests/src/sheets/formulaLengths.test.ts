import { TEMPLATES } from "../../support/templates";

/** "Length of formula contents: 8,192 characters", Excel specifications and limits, Microsoft. */
const MOST_CHARACTERS = 8192;

describe("formulas of the templates", () => {
  it.each(Object.entries(TEMPLATES))("are no longer than Excel takes: %s", (_, { sheets }) => {
    const lengths = sheets.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => (content?.kind === "formula" ? [content.formula.length] : [])),
    );
    expect(Math.max(...lengths)).toBeGreaterThan(0);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(MOST_CHARACTERS);
  });
});
