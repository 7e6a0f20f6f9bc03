import { InputError } from "../../../shared/inputError";
import { openingName } from "../../../shared/kinds/openings";
import type { Face } from "./face";
import { slabsBetween, type Crossing, type Slab } from "./slabs";
import { HAIR_IN } from "./precision";

const ringName = (ring: number): string => (ring === 0 ? "the outline" : openingName(ring));

/** Two sides that change order between the bottom and the top of a slab cross in it. */
const rejectCrossing = (a: Crossing, b: Crossing): void => {
  if (a.atLowIn - b.atLowIn <= HAIR_IN && a.atHighIn - b.atHighIn <= HAIR_IN) return;
  const [first, second] = [a.edge.ring, b.edge.ring].sort((x, y) => y - x) as [number, number];
  throw new InputError(`${ringName(first)} crosses ${ringName(second)}`);
};

/** On both sides of each edge there must be roof, or one opening in the roof. */
const rejectOutside = (inside: ReadonlySet<number>): void => {
  const [opening, other] = [...inside].filter((ring) => ring > 0);
  if (opening === undefined) return;
  if (!inside.has(0)) throw new InputError(`${openingName(opening)} is outside the outline`);
  if (other !== undefined) throw new InputError(`${openingName(opening)} and ${openingName(other)} overlap`);
};

const checkSlab = ({ crossings }: Slab): void => {
  const inside = new Set<number>();
  crossings.forEach((crossing, index) => {
    const { ring } = crossing.edge;
    if (!inside.delete(ring)) inside.add(ring);
    const next = crossings[index + 1];
    if (!next) return;
    rejectCrossing(crossing, next);
    const widthIn = next.atLowIn + next.atHighIn - crossing.atLowIn - crossing.atHighIn;
    if (widthIn > HAIR_IN) rejectOutside(inside);
  });
};

/** Rejects openings that reach outside the outline or overlap; they may touch. */
export const checkOpenings = (face: Face): void => {
  if (face.rings.length === 1) return;
  const levelsIn = face.rings.flat().map(({ upIn }) => upIn);
  slabsBetween(face, Math.min(...levelsIn), Math.max(...levelsIn)).forEach(checkSlab);
};
