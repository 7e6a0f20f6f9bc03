import { addChangeOrder, type NowChoice } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { takeoffPlan, USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import { addressBeside, HAND_COUNTED, rowsOf } from "../../../support/bid";
import { PlanWorkbook } from "../../../support/planWorkbook";
import { causesOn } from "../../../support/causes";

jest.setTimeout(120_000);

const DAY = 46_174;

let opened: PlanWorkbook | undefined;

const signedBarn = async (barn = HAND_COUNTED): Promise<PlanWorkbook> => {
  const bid = new PlanWorkbook(takeoffPlan(barn, USUAL_NAMES));
  opened = bid;
  await freezeOrder(bid.host, DAY);
  bid.goTo("Order");
  return bid;
};

// The engine forgets what names stood for only when it goes.
afterEach(() => {
  opened?.dispose();
});

const change = (bid: PlanWorkbook, now: NowChoice = { kind: "frozen" }) =>
  addChangeOrder(bid.host, { base: "Signed 1", now, dateSerial: DAY });

/** The sentences about an item, once the order is frozen again. */
const whyOf = async (bid: PlanWorkbook, item: string): Promise<string[]> => {
  await change(bid);
  return sentencesOn(bid, item);
};

const sentencesOn = async (bid: PlanWorkbook, item: string): Promise<string[]> => {
  const said = (await causesOn(bid, "Change order 1"))[item];
  if (!said) throw new Error(`nothing is said of ${item}`);
  return said;
};

/** 18 courses, each 10 ft shorter by panels of 2 ft: 5 fewer in each. */
describe("why a quantity moved", () => {
  it("leaves out what was only typed in another way", async () => {
    const bid = await signedBarn();
    bid.type("Takeoff", await addressBeside(bid, "Takeoff", "Plane A", 6), "9:12");
    bid.type("Takeoff", await addressBeside(bid, "Takeoff", "Plane B", 4), `216"`);
    bid.type("Takeoff", await addressBeside(bid, "Takeoff", "Plane B", 2), 30);
    expect(await whyOf(bid, "panels")).toEqual([`Plane B eave 40' 0" to 30' 0": 90 fewer panels laid`]);
  });

  it("tells a figure of the order that was typed over from what was worked out before", async () => {
    const bid = await signedBarn();
    bid.type("Order", await addressBeside(bid, "Order", "ridge", 6), 9);
    expect(await whyOf(bid, "ridge")).toEqual(["ridge to order 5 to 9, typed over the formula"]);
  });
});

/** Types into columns of a plane's row, `G` being its pitch. */
const typeInPlane = async (
  bid: PlanWorkbook,
  plane: string,
  typed: Readonly<Record<string, string | number | null>>,
): Promise<void> => {
  const row = (await addressBeside(bid, "Takeoff", plane, 0)).slice(1);
  for (const [column, value] of Object.entries(typed)) bid.type("Takeoff", `${column}${row}`, value);
};

/** 9 in 12 to 16 in 12 over 14.4 ft: 18 ft to 24 ft, 6 courses of 20 panels. */
const STEEPER = `Plane A pitch 9 in 12 to 16 in 12`;

describe("what a person has renamed", () => {
  it("is found again by what it holds, sheets by most of it", async () => {
    const bid = await signedBarn();
    await typeInPlane(bid, "Plane A", { G: 16 });
    bid.rename("Takeoff", "Barn's roof");
    bid.rename("Order", "Barn");
    bid.rename("Panel", "Shingle");
    bid.rename("Trims", "Flashings");
    expect(await whyOf(bid, "panels")).toEqual([`${STEEPER}: 6 more courses, 120 more panels laid`]);
  });

  it("also between two signed orders, whose own sheet was renamed", async () => {
    const bid = await signedBarn();
    await typeInPlane(bid, "Plane A", { G: 16 });
    await freezeOrder(bid.host, DAY);
    bid.rename("Takeoff", "Barn's roof");
    bid.rename("Order", "Barn");
    await change(bid, { kind: "signed", sheet: "Signed 2" });
    expect(await sentencesOn(bid, "panels")).toEqual([`${STEEPER}: 6 more courses, 120 more panels laid`]);
  });

  it("is said of a plane that is the same but for its name", async () => {
    const bid = await signedBarn();
    await typeInPlane(bid, "Plane B", { A: "Back" });
    await typeInPlane(bid, "Plane A", { G: 16 });
    expect(await whyOf(bid, "panels")).toEqual([
      "Plane B is now called Back",
      `${STEEPER}: 6 more courses, 120 more panels laid`,
    ]);
  });

  it("but a plane of another name and another measurement is another plane", async () => {
    const bid = await signedBarn();
    await typeInPlane(bid, "Plane B", { A: "Back", E: "20 ft" });
    expect(await whyOf(bid, "panels")).toEqual([
      `Back is new: shape rectangle, eave 40' 0", slope length 20' 0": 20 more courses, 400 more panels laid`,
      `Plane B was removed (shape rectangle, eave 40' 0", slope length 18' 0"): 18 fewer courses, 360 fewer panels laid`,
    ]);
  });
});

describe("why an item moved names its own inputs and counts, no others", () => {
  it("a pitch: panels count courses, fasteners themselves", async () => {
    const bid = await signedBarn();
    await typeInPlane(bid, "Plane A", { G: 16 });
    bid.type("Panel", await addressBeside(bid, "Panel", "clips per panel", 1), 1);
    await change(bid);
    // Clips are no panels, and what lays panels doesn't read how they are clipped.
    expect(await sentencesOn(bid, "panels")).toEqual([`${STEEPER}: 6 more courses, 120 more panels laid`]);
    // 840 panels laid, a tenth more.
    expect(await sentencesOn(bid, "panel clips")).toEqual([
      STEEPER,
      "clips per panel 0 to 1",
      "these changes together: 924 more clips",
    ]);
  });

  it("a plane that is gone leaves nothing new behind, though an input of it stayed", async () => {
    const planes = HAND_COUNTED.planes.map((plane) => ({ ...plane, gableEdges: 2 }));
    const bid = await signedBarn({ ...HAND_COUNTED, planes });
    await typeInPlane(bid, "Plane B", { A: null, B: null, C: null, E: null });
    await change(bid);
    expect(await sentencesOn(bid, "gable channel")).toEqual([
      expect.stringMatching(/^Plane B was removed \(slope length 18' 0", gable edges 2\): \d+ fewer pieces$/),
    ]);
    expect((await sentencesOn(bid, "trim clips")).join()).not.toContain("is new");
  });

  it("a plane that is new, with its words and lengths", async () => {
    const bid = await signedBarn();
    const row = Number((await addressBeside(bid, "Takeoff", "Plane B", 0)).slice(1)) + 1;
    for (const [column, value] of [
      ["A", "Porch"],
      ["B", "rectangle"],
      ["C", 12],
      ["E", "8 ft"],
    ] as const)
      bid.type("Takeoff", `${column}${row}`, value);
    expect(await whyOf(bid, "panels")).toEqual([
      `Porch is new: shape rectangle, eave 12' 0", slope length 8' 0": 8 more courses, 48 more panels laid`,
    ]);
  });

  it("a word that was chosen, and a share", async () => {
    const bid = await signedBarn();
    await typeInPlane(bid, "Plane B", { B: "triangle" });
    bid.type("Order", await addressBeside(bid, "Order", "panels", 3), 0.15);
    const [shape, waste, ...others] = await whyOf(bid, "panels");
    expect(shape).toMatch(/^Plane B shape rectangle to triangle: \d+ fewer panels laid$/);
    expect([waste, ...others]).toEqual(["panels waste 10% to 15%"]);
  });

  it("a price, on the sheet where it was typed", async () => {
    const bid = await signedBarn();
    bid.type("Panel", await addressBeside(bid, "Panel", "panel price", 1), 8);
    bid.type("Trims", await addressBeside(bid, "Trims", "ridge", 11), 21.15);
    bid.type("Order", await addressBeside(bid, "Order", "nails", 10), 7.5);
    await change(bid);
    expect(await sentencesOn(bid, "panels")).toEqual(["panel price 7.35 to 8.00"]);
    expect(await sentencesOn(bid, "ridge")).toEqual(["ridge price of a pack 19.80 to 21.15"]);
    expect(await sentencesOn(bid, "nails")).toEqual(["nails price of a pack 6.90 to 7.50"]);
  });
});

describe("where two planes changed", () => {
  const twoPlanes = async (): Promise<PlanWorkbook> => {
    const planes = HAND_COUNTED.planes.map((plane) => ({ ...plane, gableEdges: 2 }));
    const bid = await signedBarn({ ...HAND_COUNTED, planes });
    await typeInPlane(bid, "Plane A", { G: 16 });
    await typeInPlane(bid, "Plane B", { C: 30, E: "19 ft 6 in" });
    await change(bid);
    return bid;
  };
  const [A, B] = [STEEPER, `Plane B eave 40' 0" to 30' 0", slope length 18' 0" to 19' 6"`];

  it("each has its share where it is counted plane by plane, else all have a sum", async () => {
    const bid = await twoPlanes();
    expect(await sentencesOn(bid, "panels")).toEqual([
      `${A}: 6 more courses, 120 more panels laid`,
      `${B}: 2 more courses, 60 fewer panels laid`,
    ]);
    // 12 in apart: 19 clips along 18 ft, four times; then 25 along 24 ft and 21 along 19.5 ft, twice each.
    expect(await sentencesOn(bid, "trim clips")).toEqual([A, B, "these changes together: 16 more clips"]);
    // Two for each of these clips; an eave 10 ft shorter has 12 fewer, 10 in apart, and 10 fewer, 12 in apart.
    expect(await sentencesOn(bid, "nails")).toEqual([A, B, "these changes together: 10 more nails"]);
  });

  it("trim says how much longer each makes the runs that it follows", async () => {
    const bid = await twoPlanes();
    // Two gables each.
    expect(await sentencesOn(bid, "gable channel")).toEqual([
      `${A}: 12' 0" more gable`,
      // No eave makes a gable longer.
      `Plane B slope length 18' 0" to 19' 6": 3' 0" more gable`,
      "these changes together: 1 more piece",
    ]);
  });

  it("also where one is new, a run is typed, and where one is gone no more than the sum", async () => {
    const bid = await signedBarn();
    const row = Number((await addressBeside(bid, "Takeoff", "Plane B", 0)).slice(1)) + 1;
    for (const [column, value] of Object.entries({ A: "Porch", B: "rectangle", C: 22, E: "8 ft" }))
      bid.type("Takeoff", `${column}${row}`, value);
    await typeInPlane(bid, "Plane A", { C: 38.5 });
    await change(bid, { kind: "draft" });
    const ofDraft = (await causesOn(bid, "Draft change order 1"))["drip edge"];
    expect(ofDraft).toEqual([
      `Plane A eave 40' 0" to 38' 6": 1' 6" less eave`,
      `Porch is new: eave 22' 0": 22' 0" more eave`,
      expect.stringMatching(/^these changes together: \d more pieces$/),
    ]);
    await typeInPlane(bid, "Plane B", { A: null, B: null, C: null, E: null });
    expect(await whyOf(bid, "drip edge")).toEqual([
      `Plane A eave 40' 0" to 38' 6"`,
      `Porch is new: eave 22' 0"`,
      expect.stringMatching(/^Plane B was removed \(eave 40' 0"/),
      expect.stringMatching(/^these changes together: \d fewer pieces?$/),
    ]);
  });

  it("a trim that is gone from its sheet is named there, and moves no other trim", async () => {
    const bid = await signedBarn();
    const dripEdge = (await addressBeside(bid, "Trims", "drip edge", 0)).slice(1);
    for (const column of "ABCDEFGHIJKL") bid.type("Trims", `${column}${dripEdge}`, null);
    await typeInPlane(bid, "Plane B", { C: 30 });
    await change(bid);
    expect(await sentencesOn(bid, "drip edge")).toEqual(['drip edge was removed from "Trims"']);
    expect(await sentencesOn(bid, "eave starter")).toEqual([`Plane B eave 40' 0" to 30' 0": 1 fewer piece`]);
    expect(await sentencesOn(bid, "nails")).toContainEqual(
      expect.stringMatching(/^drip edge was removed \(follows eave/),
    );
  });

  it("what is said of several items stands there once, below their names", async () => {
    const rows = await rowsOf(await twoPlanes(), "Change order 1");
    const why = rows.findIndex(([label]) => label === "Why it moved");
    const shown = rows.slice(why + 1).map((row) => [row[0] ?? "", row[1] ?? ""]);
    expect(shown.slice(2, 4)).toEqual([
      ["each of drip edge, eave starter", ""],
      ["", `Plane B eave 40' 0" to 30' 0": 1 fewer piece`],
    ]);
  });
});
