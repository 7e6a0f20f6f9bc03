import { LIMITS } from "../../book/limits";

type Cost = Partial<Record<"drawingBytes" | "pictures" | "pictureBytes" | "picturePixels", number>>;

/** Returns whether a file may show something more of this cost, and counts it if so. */
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
