import type { Reusable } from "./piece";

/** Two pieces cut from one panel, as indexes into the list of pieces. */
export type Pair = readonly [number, number];

/** How many of the smallest pieces that keep each lock are already used. */
interface Taken {
  readonly near: number;
  readonly far: number;
  readonly neither: number;
  /** The choices that led here, last one first. */
  readonly last?: { readonly pair: Pair; readonly before: Taken };
}
type Group = "near" | "far" | "neither";

interface Small {
  readonly index: number;
  readonly blankIn: number;
}
type Smalls = Readonly<Record<Group, readonly Small[]>>;

/** The groups that a piece may share a panel with, the least useful to others first. Equal ones are all tried. */
const PARTNERS: Readonly<Record<Group, readonly (readonly Group[])[]>> = {
  near: [["far"], ["neither"]],
  far: [["near"], ["neither"]],
  neither: [["near", "far"], ["neither"]],
};

/** The states after a big piece is paired with the smallest free piece of a group that it may share a panel with. */
const afterTaking = (before: Taken, index: number, keeps: Group, smalls: Smalls, roomIn: number): Taken[] => {
  for (const equals of PARTNERS[keeps]) {
    const states = equals.flatMap((group) => {
      const small = smalls[group][before[group]];
      if (!small || small.blankIn > roomIn) return [];
      return [
        { ...before, [group]: before[group] + 1, last: { pair: [index, small.index] as const, before } },
      ];
    });
    if (states.length > 0) return states;
  }
  return [before];
};

/** `more` is more than any group has. */
const dropRepeats = (states: readonly Taken[], more: number): readonly Taken[] =>
  states.length < 2
    ? states
    : [
        ...new Map(
          states.map((state) => [(state.near * more + state.far) * more + state.neither, state]),
        ).values(),
      ];

/** Pairs up small pieces, any two of which fit, except that no two keep the same lock. */
const pairSmalls = (smalls: Smalls, taken: Taken): Pair[] => {
  const free = (group: Group): readonly Small[] => smalls[group].slice(taken[group]);
  const [near, neither, far] = [free("near"), free("neither"), free("far")];
  const row = [
    ...near.slice(0, neither.length + far.length),
    ...neither,
    ...far.slice(0, neither.length + near.length),
  ];
  const half = Math.floor(row.length / 2);
  return row
    .slice(0, half)
    .map(({ index }, i) => [index, (row[row.length - half + i] as Small).index] as const);
};

const pairsOf = ({ last }: Taken): Pair[] => {
  const pairs: Pair[] = [];
  for (let choice = last; choice; choice = choice.before.last) pairs.push(choice.pair);
  return pairs;
};

/**
 * A maximum matching of pieces that can be cut in pairs from one panel: one keeps the lock nearer the start, the other
 * the farther lock or none, and their blanks add up to at most `roomIn`. Panels are never turned or flipped, so two
 * pieces that keep the same lock can't pair. What a pair leaves over is not used.
 *
 * A big piece, over half the room, pairs only with a small one. From the biggest down, every small piece that fits one
 * also fits all that follow, so they differ only in their locks: each takes the partner that the fewest others can use.
 * Where a piece keeps neither lock, both kinds are tried. An exchange argument shows that the matching is maximum; the
 * tests check it against a general algorithm (Edmonds' blossom).
 */
export const matchPieces = (pieces: readonly Reusable[], roomIn: number): Pair[] => {
  const room = roomIn + 1e-9;
  const usable = pieces
    .map(({ blankIn, keeps }, index) => ({ blankIn, keeps, index }))
    .filter((piece): piece is Small & { keeps: Group } => piece.keeps !== "both" && piece.blankIn <= room)
    .sort((a, b) => a.blankIn - b.blankIn);
  const small = usable.filter(({ blankIn }) => blankIn <= room / 2);
  const big = usable.slice(small.length).sort((a, b) => b.blankIn - a.blankIn);
  const group = (keeps: Group): readonly Small[] => small.filter((piece) => piece.keeps === keeps);
  const smalls = { near: group("near"), far: group("far"), neither: group("neither") };

  let states: readonly Taken[] = [{ near: 0, far: 0, neither: 0 }];
  for (const { index, keeps, blankIn } of big)
    states = dropRepeats(
      states.flatMap((state) => afterTaking(state, index, keeps, smalls, room - blankIn)),
      small.length + 1,
    );
  return states
    .map((state) => [...pairsOf(state), ...pairSmalls(smalls, state)])
    .reduce((a, b) => (b.length > a.length ? b : a));
};
