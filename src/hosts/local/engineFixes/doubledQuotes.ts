import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { formulaOf, tokensOf } from "../../../workbook/formulas/tokens";

/** Replaces each quote inside a text. A private-use character, so no formula contains it. */
const PLACEHOLDER = "\uE000";

const hidden = (text: string): string => `"${text.slice(1, -1).replaceAll('"', PLACEHOLDER)}"`;

const hide = (formula: string): string =>
  formulaOf(
    tokensOf(formula).map((token) =>
      token.kind === "text" ? { ...token, text: hidden(token.text) } : token,
    ),
  );

const show = (text: string): string => text.replaceAll(PLACEHOLDER, '"');

type Build = LexerTreeBuilder["sequenceNodesBuilder"];

const wrapped = new WeakSet<Build>();

/**
 * The engine splits a formula into tokens and joins them again when the formula is typed and when rows or sheets move. It loses
 * one of the doubled quotes in a text: `("16' 7""",E5)` became `("16' 7"""E55)`. The fix hides the quotes while the engine splits
 * the formula. Lasts for the life of the page or process; a second call changes nothing.
 */
export const keepDoubledQuotes = (): void => {
  const original = LexerTreeBuilder.prototype.sequenceNodesBuilder;
  if (wrapped.has(original)) return;
  const build: Build = function (this: LexerTreeBuilder, formula) {
    if (!formula.includes('""')) return original.call(this, formula);
    return original
      .call(this, hide(formula))
      ?.map((node) => (typeof node === "string" ? show(node) : { ...node, token: show(node.token) }));
  };
  wrapped.add(build);
  LexerTreeBuilder.prototype.sequenceNodesBuilder = build;
};
