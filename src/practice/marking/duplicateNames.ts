import { counted } from "../../../shared/describe";
import type { Submission } from "./markStudent";

/** A note for each name that several students share: one may have turned in twice. */
export const duplicateNames = (submissions: readonly Pick<Submission, "name">[]): readonly string[] => {
  const names = submissions.map(({ name }) => name.toLowerCase());
  return submissions.flatMap(({ name }, index) => {
    const count = names.filter((each) => each === names[index]).length;
    return count === 1 || names.indexOf(name.toLowerCase()) < index
      ? []
      : [`${counted(count, "student")} are named "${name}": check whether one turned in twice.`];
  });
};
