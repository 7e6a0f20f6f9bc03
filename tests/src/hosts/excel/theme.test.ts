import { schemeOf } from "../../../../src/hosts/excel/theme";

describe("the pane's colors beside Excel", () => {
  it.each([
    [{ isDarkTheme: true, bodyBackgroundColor: "#FFFFFF" }, "dark"],
    [{ isDarkTheme: false, bodyBackgroundColor: "#000000" }, "light"],
    [{ bodyBackgroundColor: "#262626" }, "dark"],
    [{ bodyBackgroundColor: "#E6E6E6" }, "light"],
    [{ bodyBackgroundColor: "#0000FF" }, "dark"],
    [{}, undefined],
    [{ bodyBackgroundColor: "" }, undefined],
  ])("beside %j are %s", (theme, scheme) => {
    expect(schemeOf(theme)).toBe(scheme);
  });
});
