/** @jest-environment jsdom */
import { layOut } from "../../functions/layout/engine/layOut";
import { LEFT, panelOf, rectangle } from "../support/layouts";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../src/pictures/palette";
import { layoutPicture } from "../../src/pictures/layoutPicture";

const layout = layOut(
  { outline: rectangle(0, 0, 9, 4.2), openings: [rectangle(3, 1.2, 1.5, 1.5)] },
  panelOf({ "gable setback": 1.5, "gable fold": 2.5, "shortest piece": 3 }),
  LEFT,
  true,
);
const picture = layoutPicture(layout, {
  title: `South <"main"> & 'low'`,
  id: "south",
  palette: SCREEN_PALETTE,
});
const parse = (svg: string): Document => new DOMParser().parseFromString(svg, "image/svg+xml");
const all = (selector: string): Element[] => [...parse(picture).querySelectorAll(selector)];

describe("the picture of a layout", () => {
  it("is an SVG file with a title and a description", () => {
    const [root] = all("svg");
    expect(all("parsererror")).toHaveLength(0);
    expect(root?.getAttribute("role")).toBe("img");
    expect(root?.getAttribute("aria-labelledby")).toBe("south-title south-desc");
    expect(all("#south-title")[0]?.textContent).toBe(`South <"main"> & 'low'`);
    expect(all("#south-desc")[0]?.textContent).toContain(
      `A roof plane 9' 0" wide and 4' 2 3/8" up the slope, in 5 courses`,
    );
  });

  it("draws every course, cut, opening and warning once", () => {
    const cuts = layout.courses.flatMap((course) => course.cuts);
    const warned = cuts.filter(({ warnings }) => warnings.length > 0);
    const ofCourses = layout.courses.filter(
      ({ cuts: own, warnings }) => warnings.length > own.reduce((sum, cut) => sum + cut.warnings.length, 0),
    );
    expect(ofCourses).toHaveLength(1);
    expect(warned.length).toBeGreaterThan(0);
    expect(all("line.gw-line")).toHaveLength(5);
    // The legend has one more of each.
    expect(all("path.gw-cut, path.gw-offcut")).toHaveLength(cuts.length);
    expect(all("path.gw-gap")).toHaveLength(1);
    expect(all("path.gw-warn")).toHaveLength(warned.length + ofCourses.length + 1);
    expect(all("rect.gw-whole")).toHaveLength(
      layout.courses.flatMap(({ wholeRuns }) => wholeRuns).length + 1,
    );
  });

  it("gives each kind of piece a hatch pattern of its own", () => {
    const fills = new Set(all("path[fill], rect[fill]").map((each) => each.getAttribute("fill")));
    expect([...fills].sort()).toEqual(["url(#south-cut)", "url(#south-gap)", "url(#south-offcut)"]);
    expect(all("pattern").map(({ id }) => id)).toEqual(["south-cut", "south-offcut", "south-gap"]);
    const strokes = all("pattern path").map((each) => each.getAttribute("d"));
    expect(new Set(strokes).size).toBe(3);
  });

  it("is to scale: 9 ft of width and 4.2 ft of height keep their proportion", () => {
    const corners = [
      ...(all("path.gw-outline")[0]?.getAttribute("d") ?? "").matchAll(/([\d.]+) ([\d.]+)/g),
    ].map(([, x, y]) => [Number(x), Number(y)] as const);
    const extent = (values: number[]): number => Math.max(...values) - Math.min(...values);
    const [wide, high] = [extent(corners.map(([x]) => x)), extent(corners.map(([, y]) => y))];
    expect(wide / high).toBeCloseTo(9 / 4.2, 3);
  });

  it("shows dimensions, numbers and counts as text", () => {
    const labels = all("text").map(({ textContent }) => textContent);
    for (const each of [
      `9' 0"`,
      `4' 2 3/8"`,
      "1",
      "5",
      "start: left",
      "top course shows 2 3/8 in",
      `panels to open: ${layout.panels}`,
    ])
      expect(labels).toContain(each);
  });

  it("has colors for light and dark mode, and is always light in print", () => {
    const style = all("style")[0]?.textContent ?? "";
    expect(style).toContain("@media screen and (prefers-color-scheme:dark)");
    const properties = [...style.matchAll(/(--[a-z-]+):/g)].map(([, name]) => name);
    const used = [...picture.matchAll(/var\((--[a-z-]+)\)/g)].map(([, name]) => name);
    for (const name of used) expect(properties.filter((each) => each === name)).toHaveLength(2);
  });

  it("writes out each color for a sheet, and is otherwise the same", () => {
    const onPaper = layoutPicture(layout, { title: "South", id: "south", palette: PAPER_PALETTE });
    expect(onPaper).not.toMatch(/var\(|--[a-z]|@media/);
    const shapes = (svg: string): string[] =>
      [...parse(svg).querySelectorAll("path")].map((each) => each.getAttribute("d") ?? "");
    expect(shapes(onPaper)).toEqual(shapes(picture));
  });
});
