import { keptWorkbooks, sourceOf } from "../../../../../src/hosts/local/kept/keptWorkbooks";
import type { KeptState } from "../../../../../src/hosts/local/kept/keptState";

const stateOf = (id: number, workbook: string, more: Partial<KeptState> = {}): KeptState => ({
  id,
  workbook,
  name: workbook,
  keptAt: id,
  sizeBytes: 10,
  isInFile: false,
  ...more,
});

describe("the list of kept workbooks", () => {
  it("has each workbook once, the last kept first, with all its versions", () => {
    const states = [
      stateOf(4, "barn", { name: "Barn, north yard", isInFile: true }),
      stateOf(3, "shed"),
      stateOf(2, "barn"),
      stateOf(1, "porch"),
    ];
    expect(keptWorkbooks(states, "barn", new Set(["barn", "shed"]))).toEqual([
      {
        workbook: "barn",
        name: "Barn, north yard",
        isInFile: true,
        openIn: "this tab",
        versions: [
          { id: 4, keptAt: 4 },
          { id: 2, keptAt: 2 },
        ],
        sizeBytes: 20,
      },
      {
        workbook: "shed",
        name: "shed",
        isInFile: false,
        openIn: "another tab",
        versions: [{ id: 3, keptAt: 3 }],
        sizeBytes: 10,
      },
      { workbook: "porch", name: "porch", isInFile: false, versions: [{ id: 1, keptAt: 1 }], sizeBytes: 10 },
    ]);
  });
});

describe("a kept state as a file to open", () => {
  const bytes = Uint8Array.from([1]);

  it("has its file's name, if it has one", () => {
    expect(sourceOf(stateOf(1, "w", { fileName: "Bid.xlsx", isInFile: true }), bytes)).toEqual({
      name: "Bid.xlsx",
      bytes,
      isNamed: true,
      isInFile: true,
    });
  });

  it("has its job's name otherwise, which is no file of the user", () => {
    expect(sourceOf(stateOf(1, "w", { name: "Barn" }), bytes)).toMatchObject({
      name: "Barn.xlsx",
      isNamed: false,
      isInFile: false,
    });
  });
});
