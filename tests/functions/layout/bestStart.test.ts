import { bestStart, searchBestStart } from "../../../functions/layout/engine/findBestStart";
import type { Plane } from "../../../functions/layout/engine/face";
import { layOut } from "../../../functions/layout/engine/layOut";
import { readStart, SIDES, type LayoutStart } from "../../../shared/layoutStart";
import type { Cell, Matrix } from "../../../shared/cell";
import type { Panel } from "../../../shared/kinds/panel";
import { call, callForNumber } from "../../support/call";
import { cornersOf, panelOf, rectangle } from "../../support/layouts";

const weightOf = (plane: Plane, panel: Panel, start: LayoutStart): [number, number, number] => {
  const { courses, panels, cut } = layOut(plane, panel, start, true);
  return [courses.reduce((sum, { warnings }) => sum + warnings.length, 0), panels, cut];
};

/** Lays the plane in full from every start. */
const weighAll = (plane: Plane, panel: Panel): [number, number, number][] =>
  SIDES.flatMap((side) =>
    Array.from({ length: panel.exposedWidthIn * 4 }, (_, quarter) =>
      panel.staggerPattern.map((_step, index) =>
        weightOf(plane, panel, { side, shiftIn: quarter / 4, step: index + 1 }),
      ),
    ).flat(),
  );

const PLANES: [string, Plane, Panel][] = [
  [
    "a hip end",
    { outline: cornersOf([0, 0], [11, 0], [5.5, 5.2]), openings: [] },
    panelOf({ "exposed width": 10, "shortest piece": 2, "slant allowance": 0.5 }),
  ],
  [
    "a gable with a chimney",
    { outline: rectangle(0, 0, 9.3, 5.1), openings: [rectangle(3, 1.4, 1.7, 2)] },
    panelOf({
      "exposed width": 12,
      "gable setback": 1.5,
      "gable fold": 2.5,
      "lock flange gain": 1,
      "shortest piece": 3,
      "no-bend bands": "2-3, 7-8",
      "cut loss": 0.125,
    }),
  ],
  [
    "a leaning face",
    { outline: cornersOf([0, 0], [7, 1], [8, 5], [2, 6]), openings: [] },
    panelOf({ "exposed width": 8, "stagger pattern": "1, 1/3, 2/3" }),
  ],
];

describe("the best start", () => {
  it.each(PLANES)("for %s is at least as good as every start laid in full", (_, plane, panel) => {
    const best = bestStart(plane, panel);
    const all = weighAll(plane, panel).sort(([a1, a2, a3], [b1, b2, b3]) => a1 - b1 || a2 - b2 || a3 - b3);
    expect(best.choices).toBe(all.length);
    expect([best.warnings, best.panels, best.cuts]).toEqual(all[0]);
    expect(weightOf(plane, panel, best.start)).toEqual(all[0]);
  });

  it("is the same when searched twice", () => {
    const [, plane, panel] = PLANES[1] as [string, Plane, Panel];
    expect(bestStart(plane, panel)).toEqual(bestStart(plane, panel));
  });

  it("can be searched for in slices, and canceled", () => {
    const [, plane, panel] = PLANES[2] as [string, Plane, Panel];
    const search = searchBestStart(plane, panel);
    expect(search.next().value).toEqual({ weighed: 1, choices: 192 });
    expect(search.next().value).toEqual({ weighed: 2, choices: 192 });
    let step = search.next();
    while (!step.done) step = search.next();
    expect(step.value).toEqual(bestStart(plane, panel));

    const abandoned = searchBestStart(plane, panel);
    abandoned.next();
    abandoned.return({ ...bestStart(plane, panel), choices: 0 });
    expect(abandoned.next().done).toBe(true);
  });

  it("is accepted by the other functions", () => {
    const outline: Matrix = [
      [0, 0],
      [23, 0],
      [16, 9],
      [7, 9],
    ];
    const panel: Matrix = [
      ["exposed width", 24],
      ["exposed height", 12],
      ["shortest piece", 2],
      ["slant allowance", 1],
      ["lock flange gain", 1],
    ];
    const [[start, warnings, panels, cuts, choices]] = call(
      "BESTSTART",
      outline,
      panel,
      undefined,
      false,
    ) as [Cell[]];
    expect(readStart(String(start))).toBeDefined();
    expect(choices).toBe(768);
    expect(callForNumber("PANELCOUNT", outline, panel, undefined, start)).toBe(panels);
    const list = call("CUTLIST", outline, panel, undefined, start, true, false, false) as Matrix;
    expect(list).toHaveLength(Number(cuts));
    const total = (call("LAYOUT", outline, panel, undefined, start) as Matrix).at(-1);
    expect(total?.[8]).toBe(
      Number(warnings) === 0 ? "" : `${String(warnings)} ${Number(warnings) === 1 ? "warning" : "warnings"}`,
    );
  });
});
