import type { FunctionSpec } from "../../shared/spec";

const textOf = ({ id, concept, summary, parameters }: FunctionSpec): string =>
  [id, concept, summary, ...parameters.map(({ name, summary: help }) => `${name} ${help}`)]
    .join(" ")
    .toLowerCase();

/** The functions whose help holds every word of a search, in the catalogue's order; those that bear a word as their name first. */
export const findFunctions = (catalogue: readonly FunctionSpec[], search: string): FunctionSpec[] => {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const found = catalogue.filter((spec) => words.every((word) => textOf(spec).includes(word)));
  const isNamed = ({ id }: FunctionSpec): boolean => words.some((word) => id.toLowerCase().includes(word));
  return [...found.filter(isNamed), ...found.filter((spec) => !isNamed(spec))];
};
