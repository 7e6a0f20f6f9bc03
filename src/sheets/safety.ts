/** At the foot of every printed sheet, in the pane and in the README. */
export const CAUTIONS: readonly string[] = [
  "Roof work kills. Use fall protection and a secured ladder; keep clear of power lines; mind sharp metal edges, wet or frosted metal, wind and heat.",
  "Quantities are estimates: measure again before you order or cut. The maker's installation guide and the local code govern.",
  "Wind uplift, snow load, structure and electrical work are for a licensed professional; nothing here answers them.",
];
