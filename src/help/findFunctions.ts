import type { FunctionSpec } from "../../shared/spec";

const textOf = ({ id, concept, summary, parameters }: FunctionSpec): string =>
  [id, concept, summary, ...parameters.map(({ name, summary: help }) => `${name} ${help}`)]
    .join(" ")
    .toLowerCase();

/** Words that say nothing about a function: a search asks for the others. */
const LITTLE_WORDS = new Set("a an and at by for from how in is of on or the to what where with".split(" "));

/** The functions whose help holds every word of a search but the little ones, in the catalogue's order; those that bear a word as their name first. */
export const findFunctions = (catalogue: readonly FunctionSpec[], search: string): FunctionSpec[] => {
  const words = search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "" && !LITTLE_WORDS.has(word));
  const found = catalogue.filter((spec) => words.every((word) => textOf(spec).includes(word)));
  const isNamed = ({ id }: FunctionSpec): boolean => words.some((word) => id.toLowerCase().includes(word));
  return [...found.filter(isNamed), ...found.filter((spec) => !isNamed(spec))];
};
