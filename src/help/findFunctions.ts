import type { FunctionSpec } from "../../shared/spec/spec";
import { NAMESPACE } from "../workbook/namespace";
import { nearWord } from "./nearWord";
import { wordsFor } from "./otherWords";

const inWords = (text: string): string[] =>
  text
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z0-9°]+/)
    .filter((word) => word !== "");

/** What says nothing of a function: the beginning of every whole name, as a formula has it, and the s of `chimney's`. */
const SAYS_NOTHING = new RegExp(`\\b${NAMESPACE}\\.|['’]s\\b`, "gi");

/** What a function says of itself, and what it says of its parameters; `slopeLengthFt` is three words. */
const helpOf = ({ concept, summary, parameters }: FunctionSpec) => ({
  ofItself: inWords(`${concept} ${summary}`),
  ofParameters: inWords(parameters.map(({ name, summary: help }) => `${name} ${help}`).join(" ")),
});

/** Words that say nothing about a function: a search asks for the others. */
const LITTLE_WORDS = new Set(
  "a an and are at by do does for from go goes how i in is it many me much my need of on or the to what where with".split(
    " ",
  ),
);

/** How well a function answers to a word: best by its name, then by what it does, then by what it takes; 0 is not at all. */
const weightOf = (spec: FunctionSpec, ways: readonly string[]): number => {
  const { ofItself, ofParameters } = helpOf(spec);
  const holds = (words: readonly string[]): boolean =>
    ways.some((way) => words.some((word) => word.startsWith(way)));
  if (ways.some((way) => spec.id.toLowerCase().includes(way))) return 3;
  if (holds(ofItself)) return 2;
  return holds(ofParameters) ? 1 : 0;
};

/** Shorter words than this are too often other words, and no slips of the keyboard. */
const SHORTEST_MISSPELT = 5;

/** The help's own word in the place of one that none of it knows; undefined where none is near. */
const spelled = (catalog: readonly FunctionSpec[], word: string): string | undefined => {
  if (word.length < SHORTEST_MISSPELT) return undefined;
  const known = catalog.flatMap((spec) => {
    const { ofItself, ofParameters } = helpOf(spec);
    return [...ofItself, ...ofParameters];
  });
  return nearWord(word, known);
};

export interface Found {
  /** Those that answer best first, else in the catalog's order. */
  readonly functions: readonly FunctionSpec[];
  /** Whether each of them holds every word as it was typed; where none does, they hold as many as any. */
  readonly holdAll: boolean;
}

/** The functions whose help holds every word of a search but the little ones; where none does, those that hold most of them. */
export const findFunctions = (catalog: readonly FunctionSpec[], search: string): Found => {
  const typed = inWords(search.replaceAll(SAYS_NOTHING, "")).filter((word) => !LITTLE_WORDS.has(word));
  const isKnown = (word: string): boolean => catalog.some((spec) => weightOf(spec, wordsFor(word)) > 0);
  const sought = typed.map((word) => wordsFor(isKnown(word) ? word : (spelled(catalog, word) ?? word)));
  const rated = catalog.map((spec) => {
    const weights = sought.map((ways) => weightOf(spec, ways));
    return {
      spec,
      held: weights.filter((weight) => weight > 0).length,
      weight: weights.reduce((sum, weight) => sum + weight, 0),
    };
  });
  const most = Math.max(...rated.map(({ held }) => held));
  return {
    functions: rated
      .filter(({ held }) => held === most && (sought.length === 0 || most > 0))
      .sort((a, b) => b.weight - a.weight)
      .map(({ spec }) => spec),
    holdAll: most === sought.length && typed.every(isKnown),
  };
};
