/**
 * Two change orders of the bid that is counted by hand, worked out by hand.
 * Panels: 40 ft by 18 ft is 360 of them, twice: 720; a tenth more is 792: 80 packs of 10.
 * Drip edge and eave starter, 480 in twice in 120 in lengths that lap 2: 4 whole and 8 in, twice; the 8 in share one: 9.
 * Underlayment, 36 in that lap 2, 1 in over every edge: 7 courses of 40 ft 2 in, twice: 6748 in; rolls of 800 that lap 4: 9.
 *
 * First change: A at 16 in 12 is 24 ft (5/3 of 14.4): 480 panels; B at 19.5 ft is 20 courses of 20: 400. 880, a tenth more
 * 968: 97 packs. Underlayment 9 courses and 7 of 40 ft 2 in: 7712 in, 10 rolls.
 * Second: B's eave is 30 ft: 20 courses of 15: 300. 780, a tenth more 858: 86 packs. Eaves of 480 and 360 in: 4 and 8 in,
 * 3 and 6 in: 8 pieces. Underlayment 9 of 40 ft 2 in and 7 of 30 ft 2 in: 6872 in, 9 rolls. A ridge piece costs 1.35 more. An eave
 * 10 ft shorter needs fewer nails, out of the same box.
 */
export const FIRST_LINES = [
  // item, what, ordered before and after, change, price before and now, material, labor, tax
  ["panels", "changed", 80, 97, 17, 73.5, 73.5, 1249.5, 365.5, 90.59],
  ["drip edge", "unchanged", 9, 9, 0, 11.4, 11.4, 0, 0, 0],
  ["eave starter", "unchanged", 9, 9, 0, 12.75, 12.75, 0, 0, 0],
  ["ridge", "unchanged", 5, 5, 0, 19.8, 19.8, 0, 0, 0],
  ["trim clips", "unchanged", 1, 1, 0, 14.5, 14.5, 0, 0, 0],
  ["nails", "unchanged", 1, 1, 0, 6.9, 6.9, 0, 0, 0],
  ["underlayment", "changed", 9, 10, 1, 68, 68, 68, 0, 4.93],
];
export const SECOND_LINES = [
  // Labor goes on from the first change order: 11 × 21.50.
  ["panels", "changed", 97, 86, -11, 73.5, 73.5, -808.5, -236.5, 0],
  ["drip edge", "changed", 9, 8, -1, 11.4, 11.4, -11.4, 0, 0],
  ["eave starter", "changed", 9, 8, -1, 12.75, 12.75, -12.75, 0, 0],
  ["ridge", "changed", 5, 5, 0, 19.8, 21.15, 6.75, 0, 0],
  ["trim clips", "unchanged", 1, 1, 0, 14.5, 14.5, 0, 0, 0],
  ["nails", "same order", 1, 1, 0, 6.9, 6.9, 0, 0, 0],
  ["underlayment", "changed", 10, 9, -1, 68, 68, -68, 0, 0],
];
export const FIRST_AMOUNTS = {
  "Material, additions": 1317.5,
  "Material, deductions": 0,
  "Labor, additions": 365.5,
  "Labor, deductions": 0,
  "Overhead, additions": 168.3,
  "Overhead, deductions": 0,
  // 5 % of 1851.30 is 92.565.
  "Profit, additions": 92.57,
  "Profit, deductions": 0,
  // 90.58875 and 4.93, each rounded.
  "Sales tax": 95.52,
  "Total of this change": 2039.39,
  "Changes before this one": 0,
  "Changes to date": 2039.39,
  "Contract sum before this change": 25000,
  "Contract sum now": 27039.39,
  "Retainage on this change": 203.94,
  "Days added to date": 2,
};
export const SECOND_AMOUNTS = {
  "Material, additions": 6.75,
  "Material, deductions": -900.65,
  "Labor, additions": 0,
  "Labor, deductions": -236.5,
  // 0.675
  "Overhead, additions": 0.68,
  // 10 % of 1137.15 is 113.715.
  "Overhead, deductions": -113.72,
  // 5 % of 7.43 is 0.3715.
  "Profit, additions": 0.37,
  // 5 % of 1250.87 is 62.5435.
  "Profit, deductions": -62.54,
  // 7.25 % of 893.90 is 64.80775.
  "Sales tax": -64.81,
  "Total of this change": -1370.42,
  "Changes before this one": 2039.39,
  "Changes to date": 668.97,
  "Contract sum before this change": 27039.39,
  "Contract sum now": 25668.97,
  "Retainage on this change": -137.04,
  "Days added to date": 5,
};
