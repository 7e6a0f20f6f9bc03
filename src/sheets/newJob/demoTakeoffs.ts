import type { TakeoffOptions } from "../takeoff/takeoffOptions";

/**
 * A published roof: the gable roof of US Army Engineer School Subcourse EN0069, Edition A (Frame Structures), Lesson 3
 * self-test: building 60 ft long, rafters of 11 ft 4 in line length and a 2 ft overhang. Its 10 ft run comes from the
 * exercise before it; 6.4 in 12 is the pitch at which 10 ft of run has that line length (the 8-15-17 triangle).
 * The panel is invented.
 */
export const DEMO_TAKEOFF: TakeoffOptions = {
  job: "storage building, gable roof",
  notes: [
    "Roof: US Army Engineer School Subcourse EN0069 Ed. A, Lesson 3 self-test: 60 ft long, rafter line 11' 4\", overhang 2'. Everything else: invented.",
  ],
  planes: [
    { name: "North", shape: "rectangle", eave: 60, run: 10, pitch: 6.4, tail: 2, gableEdges: 2 },
    { name: "South", shape: "rectangle", eave: 60, run: 10, pitch: 6.4, tail: 2, gableEdges: 2 },
  ],
  runs: [{ edge: "ridge", name: "ridge", length: 60 }],
  penetrations: [{ kind: "pipe", name: "vent pipe" }],
  deck: { atticFloorSqFt: 1200 },
  spare: 0.1,
  supplies: {
    "panel clips": { price: 14.5, weightLb: 0.02 },
    "trim clips": { price: 14.5, weightLb: 0.02 },
    nails: { price: 6.9, perPack: 1000 },
    underlayment: { price: 68, weightLb: 30 },
    "ice barrier": { price: 96, weightLb: 60 },
  },
  trims: {
    "drip edge": { girthIn: 6, price: 11.4 },
    "eave starter": { girthIn: 5, price: 12.75 },
    valley: { girthIn: 24, price: 41.5 },
    "gable channel": { girthIn: 8, price: 16.2 },
    "chimney front": { girthIn: 16, price: 24 },
    "chimney side": { girthIn: 12, price: 21 },
    "chimney back": { girthIn: 18, price: 26.5 },
    "pipe flashing": { weightLb: 1.5, price: 28 },
    hip: { girthIn: 10, price: 18.6 },
    ridge: { girthIn: 12, price: 19.8 },
  },
  panel: {
    exposedWidthIn: 24,
    exposedHeightIn: 12,
    gableSetbackIn: 1.5,
    gableFoldIn: 2.5,
    lockFlangeGainIn: 1,
    panelsPerPack: 10,
    clipsPerPanel: 1,
    trimLapIn: 2,
    panelWeightLb: 1.9,
    panelPrice: 7.35,
    nailsPerPound: 180,
    packsPerPallet: 24,
    trimMetal: "aluminum",
    trimThicknessIn: 0.032,
  },
};

/** An invented L-shaped house, calculated from its footprint: hips, a valley, one gable end. */
export const FOOTPRINT_DEMO: TakeoffOptions = {
  ...DEMO_TAKEOFF,
  job: "house with a wing, from its footprint",
  notes: ["Everything is invented."],
  roof: {
    corners: [
      [0, 0],
      [40, 0],
      [40, 24],
      [20, 24],
      [20, 44],
      [0, 44],
    ],
    pitch: 6,
    eaveOverhang: 1,
    gables: [2],
  },
  planes: [],
  runs: [],
  penetrations: [
    { kind: "chimney", name: "chimney", width: `2' 8"`, depth: 2, pitch: 6 },
    { kind: "pipe", name: "vent pipe" },
  ],
  deck: { wallIn: 6, atticFloorSqFt: 1360 },
};
