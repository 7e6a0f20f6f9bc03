import { catalog } from "../../../functions/index";
import { findFunctions } from "../../../src/help/findFunctions";

// cspell:ignore trimst rafer lenght
const found = (search: string): string[] => findFunctions(catalog, search).functions.map(({ id }) => id);

describe("a search for a function", () => {
  it("finds it by its name, or a part of it, letter case aside", () => {
    expect(found("trimst")[0]).toBe("TRIMSTOCK");
    expect(found("courses")[0]).toBe("COURSES");
  });

  it.each(["GABLE.COURSES", "gable.courses", "=GABLE.COURSES("])(
    "finds it by its whole name, as a formula has it: %s",
    (search) => {
      expect(found(search)[0]).toBe("COURSES");
    },
  );

  it("takes words that are joined for words", () => {
    expect(found("a chimney's trim")).toEqual(found("chimney trim"));
    expect(found("ridge-cap")).toEqual(found("ridge cap"));
    expect(found("hip?")).toEqual(found("hip"));
  });

  it("puts first what bears most of the words in its name", () => {
    expect(found("rafter length")[0]).toBe("RAFTERLENGTH");
    expect(found("rafter")[0]).toBe("RAFTERFACTOR");
  });

  it("finds it by what it does", () => {
    expect(found("attic vents")).toEqual(["VENTAREA"]);
    expect(found("whole packs")).toContain("PACKS");
  });

  it("doesn't ask for the little words of a phrase", () => {
    expect(found("length of the slope from run and pitch")).toEqual(found("length slope run pitch"));
    expect(found("the length of a slope")[0]).toBe("RAFTERLENGTH");
  });

  it.each([
    ["felt", "UNDERLAYMENT"],
    ["bundles", "PACKS"],
    ["boxes", "PACKS"],
    ["how many shingles do I need", "PANELCOUNT"],
    ["screws", "NAILCOUNT"],
    ["flashing around a chimney", "CHIMNEYTRIM"],
    ["ice shield", "ICEBARRIER"],
    ["valleys", "HIPLENGTH"],
    ["drip edge", "TRIMPIECES"],
    ["ridge cap", "TRIMFEET"],
    ["tarpaper", "UNDERLAYMENT"],
  ])("knows what people say: %s", (search, id) => {
    expect(found(search)).toContain(id);
  });

  it("goes by how words begin: a price is no ice", () => {
    expect(found("ice barrier")).toEqual(["ICEBARRIER"]);
    expect(found("ice")).not.toContain("MARKUP");
  });

  it.each([
    ["how long is the rafter", "RAFTERLENGTH"],
    ["rows of shingles", "COURSES"],
    ["eave trim", "TRIMPIECES"],
    ["corses", "COURSES"],
    ["rafer lenght", "RAFTERLENGTH"],
  ])("shows first what answers best, keyboard slips aside: %s", (search, id) => {
    expect(found(search).slice(0, 3)).toContain(id);
  });

  it("shows what holds most of the words where nothing holds them all, and says so", () => {
    expect(findFunctions(catalog, "how many boxes of nails")).toMatchObject({ matchAll: false });
    expect(found("how many boxes of nails")).toEqual(["NAILCOUNT", "NAILPOUNDS", "PACKS"]);
    expect(found("attic zebra")).toEqual(["VENTAREA"]);
    expect(findFunctions(catalog, "attic vents").matchAll).toBe(true);
    // It was guessed what is meant: none holds the word itself.
    expect(findFunctions(catalog, "corses").matchAll).toBe(false);
  });

  it("finds nothing by words that no help knows, and without one shows the whole catalog in its order", () => {
    for (const word of ["zebra", "house", "trees"]) expect(found(word)).toEqual([]);
    expect(findFunctions(catalog, "  ")).toEqual({ functions: catalog, matchAll: true });
  });
});
