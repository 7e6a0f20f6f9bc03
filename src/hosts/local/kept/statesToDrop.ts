import type { KeptState } from "./keptState";

/** The last states of each workbook, all of which stay. */
const LAST_STATES = 10;
const HOUR_MS = 3_600_000;
/** Enough for some hundred ordinary bids. */
const MOST_BYTES = 200_000_000;

/** The same in words. */
export const KEPT_RULE = `its last ${LAST_STATES} versions, and one per hour before those. If all workbooks take more than ${MOST_BYTES / 1_000_000} MB, the oldest versions are deleted`;

const newestFirst = (states: readonly KeptState[]): KeptState[] =>
  [...states].sort((one, other) => other.keptAt - one.keptAt || other.id - one.id);

/** Of a workbook's older states, the newest of each hour stays. */
const thinnedOut = (states: readonly KeptState[]): KeptState[] => {
  const hours = new Set<number>();
  return newestFirst(states)
    .slice(LAST_STATES)
    .filter(({ keptAt }) => {
      const hour = Math.floor(keptAt / HOUR_MS);
      const isSeen = hours.has(hour);
      hours.add(hour);
      return isSeen;
    });
};

/**
 * The states that must go after one was added: of each workbook all but the last ten and one an hour before them; and where
 * all take more space than allowed, the oldest, whichever workbook they belong to. The newest of all always stays.
 */
export const statesToDrop = (states: readonly KeptState[], mostBytes = MOST_BYTES): KeptState[] => {
  const workbooks = new Set(states.map(({ workbook }) => workbook));
  const thinned = new Set(
    [...workbooks].flatMap((id) => thinnedOut(states.filter(({ workbook }) => workbook === id))),
  );
  let bytes = 0;
  const tooMuch = newestFirst(states)
    .filter((state) => !thinned.has(state))
    .filter((state, index) => {
      bytes += state.sizeBytes;
      return index > 0 && bytes > mostBytes;
    });
  return [...thinned, ...tooMuch];
};
