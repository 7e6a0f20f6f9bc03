import type { FunctionSpec } from "../../shared/spec/spec";
import { NAMESPACE } from "../workbook/namespace";
import { closestWord } from "./closestWord";
import { searchTerms } from "./synonyms";

const inWords = (text: string): string[] =>
  text
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z0-9°]+/)
    .filter((word) => word !== "");

/** Parts that don't help to find a function: the namespace of a full name, and the possessive s of `chimney's`. */
const IGNORED_PARTS = new RegExp(`\\b${NAMESPACE}\\.|['’]s\\b`, "gi");

/** The words of a function's own help and of its parameters' help; `slopeLengthFt` counts as three words. */
const helpOf = ({ concept, summary, parameters }: FunctionSpec) => ({
  ofItself: inWords(`${concept} ${summary}`),
  ofParameters: inWords(parameters.map(({ name, summary: help }) => `${name} ${help}`).join(" ")),
});

/** Common words that a search ignores. */
const STOP_WORDS = new Set(
  "a an and are at by do does for from go goes how i in is it many me much my need of on or the to what where with".split(
    " ",
  ),
);

/** How well a function matches any of the terms: 3 by its name, 2 by its summary, 1 by its parameters, 0 not at all. */
const weightOf = (spec: FunctionSpec, terms: readonly string[]): number => {
  const { ofItself, ofParameters } = helpOf(spec);
  const matches = (words: readonly string[]): boolean =>
    terms.some((term) => words.some((word) => word.startsWith(term)));
  if (terms.some((term) => spec.id.toLowerCase().includes(term))) return 3;
  if (matches(ofItself)) return 2;
  return matches(ofParameters) ? 1 : 0;
};

/** Shorter unknown words are more often other words than typos. */
const SHORTEST_CORRECTED = 5;

/** The closest word of the help to one that it doesn't contain; undefined if none is close. */
const corrected = (catalog: readonly FunctionSpec[], word: string): string | undefined => {
  if (word.length < SHORTEST_CORRECTED) return undefined;
  const known = catalog.flatMap((spec) => {
    const { ofItself, ofParameters } = helpOf(spec);
    return [...ofItself, ...ofParameters];
  });
  return closestWord(word, known);
};

export interface Found {
  /** Best matches first, then in the catalog's order. */
  readonly functions: readonly FunctionSpec[];
  /** Whether each of them matches every word as typed. If none does, these match the most words. */
  readonly matchAll: boolean;
}

/** The functions that match every word of a search except stop words or, if none does, the most words. */
export const findFunctions = (catalog: readonly FunctionSpec[], search: string): Found => {
  const typed = inWords(search.replaceAll(IGNORED_PARTS, "")).filter((word) => !STOP_WORDS.has(word));
  const isKnown = (word: string): boolean => catalog.some((spec) => weightOf(spec, searchTerms(word)) > 0);
  const searched = typed.map((word) =>
    searchTerms(isKnown(word) ? word : (corrected(catalog, word) ?? word)),
  );
  const rated = catalog.map((spec) => {
    const weights = searched.map((terms) => weightOf(spec, terms));
    return {
      spec,
      matched: weights.filter((weight) => weight > 0).length,
      weight: weights.reduce((sum, weight) => sum + weight, 0),
    };
  });
  const most = Math.max(...rated.map(({ matched }) => matched));
  return {
    functions: rated
      .filter(({ matched }) => matched === most && (searched.length === 0 || most > 0))
      .sort((a, b) => b.weight - a.weight)
      .map(({ spec }) => spec),
    matchAll: most === searched.length && typed.every(isKnown),
  };
};
