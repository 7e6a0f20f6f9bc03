import { counted } from "../../../shared/describe";
import type { HandedIn } from "./student";

/** A sentence for each name that several go by: one may have handed in twice, or two be called alike. */
export const sameNames = (handedIn: readonly Pick<HandedIn, "name">[]): readonly string[] => {
  const names = handedIn.map(({ name }) => name.toLowerCase());
  return handedIn.flatMap(({ name }, index) => {
    const alike = names.filter((each) => each === names[index]).length;
    return alike === 1 || names.indexOf(name.toLowerCase()) < index
      ? []
      : [`${counted(alike, "student")} are called "${name}": see whether one handed in twice.`];
  });
};
