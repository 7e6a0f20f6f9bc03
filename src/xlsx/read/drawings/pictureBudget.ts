import { LIMITS } from "../../book/limits";

type Cost = Partial<Record<"drawingBytes" | "pictures" | "pictureBytes" | "picturePixels", number>>;

/** Says whether a file may still show something of this cost, and counts it. */
export type PictureBudget = (cost: Cost) => boolean;

export const pictureBudget = (): PictureBudget => {
  const { drawingBytes, pictures, pictureBytes, picturePixels } = LIMITS;
  const left: Required<Cost> = { drawingBytes, pictures, pictureBytes, picturePixels };
  const kinds = Object.keys(left) as (keyof Cost)[];
  return (cost) => {
    if (kinds.some((kind) => (cost[kind] ?? 0) > left[kind])) return false;
    for (const kind of kinds) left[kind] -= cost[kind] ?? 0;
    return true;
  };
};
