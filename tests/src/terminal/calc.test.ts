import { spawnSync } from "node:child_process";
import { join } from "node:path";

const ROOT = join(__dirname, "../../..");

interface Run {
  readonly answers: unknown[];
  readonly status: number | null;
  readonly errors: string;
}

const calc = (formulas: readonly string[], input?: string): Run => {
  const run = spawnSync(process.execPath, ["--import", "tsx", "src/terminal/calc.ts", ...formulas], {
    cwd: ROOT,
    input,
    encoding: "utf8",
  });
  const lines = run.stdout.split("\n").filter((line) => line !== "");
  return {
    answers: lines.map((line) => JSON.parse(line) as unknown),
    status: run.status,
    errors: run.stderr,
  };
};

const near = (value: number, digits = 6): unknown => expect.closeTo(value, digits);

describe("npm run calc", () => {
  it("answers each formula with one line of JSON, in order", () => {
    const expected: readonly (readonly [string, unknown])[] = [
      ['=GABLE.RAFTERFACTOR("6:12")', near(1.118034)],
      ["=GABLE.HIPFACTOR(6)", 1.5],
      ['=GABLE.PITCHANGLE("50%")', near(26.565051)],
      ['=GABLE.COURSES("20 ft","12 in")', 20],
      ["=GABLE.STARTERCOVER(3,24,1.5)", 16.5],
      ["=GABLE.STARTERBLANK(3,24,1.5,2.5)", 19],
      ["=GABLE.STARTERSETS(20,12)", 5],
      ["=GABLE.CLIPCOUNT(20,12)", 21],
      ["=GABLE.TAPE(18.5416667)", `18' 6 1/2"`],
      [`=GABLE.FEET("18' 6 1/2""")`, near(18.541667)],
      ['=GABLE.BENDANGLE("hip",6)', near(36.869898)],
      ["=GABLE.FACEANGLE(6)", near(48.189685)],
      ["=GABLE.CLIPCOUNT(20,0)", { error: "#VALUE!", message: "spacing must be more than 0 in, got 0" }],
      ["=GABLE.OUTLINEAREA({0,0;30,0;30,20;0,20})", 600],
      ['=GABLE.STAGGEROFFSET(2,24,{"1, 1/2, 3/4, 1/4"})', 12],
      [
        '=GABLE.OUTLINE("triangle",30,20,,,FALSE)',
        [
          [0, 0],
          [30, 0],
          [15, 20],
        ],
      ],
      ["=1/0", { error: "#DIV/0!", message: "" }],
      ["=SUM(GABLE.COURSES({10;20},12))", 30],
      ["=2>1", true],
    ];
    const { answers, status, errors } = calc(expected.map(([formula]) => formula));
    expect(answers).toEqual(expected.map(([, answer]) => answer));
    expect(status).toBe(0);
    expect(errors).toBe("");
  });

  it("reads a thousand lines in one run, and answers a blank line with a blank", () => {
    const lines = Array.from({ length: 1000 }, (_, i) => (i === 10 ? "" : `=GABLE.COURSES(${i},12)`));
    const { answers, status } = calc([], `${lines.join("\n")}\n`);
    expect(answers).toEqual(lines.map((line, i) => (line === "" ? "" : i)));
    expect(status).toBe(0);
  });

  it("continues after a line that isn't a formula, and exits with 1", () => {
    const { answers, status } = calc([], "=GABLE.COURSES(20,\n=GABLE.COURSES(20,12)\n");
    expect(answers).toEqual([{ error: "#PARSE!", message: "this isn't a formula: =GABLE.COURSES(20," }, 20]);
    expect(status).toBe(1);
  });
});
