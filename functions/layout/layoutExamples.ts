/** A gable 30 ft along the eave and 20 ft up the slope. */
export const GABLE_30_BY_20 = [
  [0, 0],
  [30, 0],
  [30, 20],
  [0, 20],
];

/** Two courses of two panels. */
export const GABLE_4_BY_2 = [
  [0, 0],
  [4, 0],
  [4, 2],
  [0, 2],
];

/** A hip end 6 ft along the eave and 3 ft up the slope. */
export const HIP_TRIANGLE = [
  [0, 0],
  [6, 0],
  [3, 3],
];

/** A panel of 24 x 12 in and nothing else: no setback, fold or loss. */
export const PLAIN_PANEL = [
  ["exposed width", 24],
  ["exposed height", 12],
];

/** A usual gable: a four-course stagger, setback 1 1/2 in, fold 2 1/2 in. */
export const GABLE_PANEL = [
  ...PLAIN_PANEL,
  ["gable setback", 1.5],
  ["gable fold", 2.5],
  ["lock flange gain", 1],
];
