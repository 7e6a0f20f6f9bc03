import { METALS, type Metal } from "../metals";
import { choice } from "./choice";
import type { CellKind } from "./kind";

const aName = choice(METALS.flatMap(({ names }) => names));

/** A metal by one of its names. */
export const metal: CellKind<Metal> = {
  ...aName,
  read: (cell, label) => {
    const name = aName.read(cell, label);
    return METALS.find(({ names }) => names.includes(name)) as Metal;
  },
};
