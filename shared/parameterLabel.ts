import { NAME_ENDINGS } from "./kinds/kind";

const ENDING = new RegExp(`(?:${NAME_ENDINGS.join("|")})$`);

const labels = new Map<string, string>();

/** The parameter's name as a sentence says it: without the unit that its end carries. Asked for at every call, so remembered. */
export const parameterLabel = (name: string): string => {
  const known = labels.get(name);
  if (known !== undefined) return known;
  const label = name.replace(ENDING, "");
  labels.set(name, label);
  return label;
};
