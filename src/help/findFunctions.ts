import type { FunctionSpec } from "../../shared/spec";
import { wordsFor } from "./otherWords";

/** The words of a function's help; `slopeLengthFt` is three. */
const helpWords = ({ concept, summary, parameters }: FunctionSpec): string[] =>
  [concept, summary, ...parameters.map(({ name, summary: help }) => `${name} ${help}`)]
    .join(" ")
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z0-9°]+/);

/** Words that say nothing about a function: a search asks for the others. */
const LITTLE_WORDS = new Set(
  "a an and at by do does for from how i in is it many much my need of on or the to what where with".split(
    " ",
  ),
);

/** The functions whose help holds every word of a search but the little ones, those first whose name holds most of them, else in the catalogue's order. */
export const findFunctions = (catalogue: readonly FunctionSpec[], search: string): FunctionSpec[] => {
  const words = search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "" && !LITTLE_WORDS.has(word));
  const sought = words.map(wordsFor);
  const isNamed = ({ id }: FunctionSpec, word: string): boolean => id.toLowerCase().includes(word);
  const found = catalogue.filter((spec) => {
    const help = helpWords(spec);
    return sought.every((ways) =>
      ways.some((way) => isNamed(spec, way) || help.some((helpWord) => helpWord.startsWith(way))),
    );
  });
  const namedBy = (spec: FunctionSpec): number =>
    sought.filter((ways) => ways.some((way) => isNamed(spec, way))).length;
  return found.sort((a, b) => namedBy(b) - namedBy(a));
};
