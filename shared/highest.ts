/** The highest of some numbers, and no less than `least`; of more of them, too, than a call may have arguments. */
export const highest = (numbers: Iterable<number>, least: number): number => {
  let most = least;
  for (const number of numbers) most = Math.max(most, number);
  return most;
};
