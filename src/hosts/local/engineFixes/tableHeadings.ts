import { Lexer } from "@univerjs/engine-formula";
import { withTableParts } from "./tableParts";
import { formulaOf, tokensOf } from "../../../workbook/formulas/tokens";

/** Of Unicode's private use, so that no heading has them. */
const OPEN = "\ue000";
const CLOSE = "\ue001";

/** A table's heading, or a formula's brackets with headings in them, in signs that the engine can read. */
export const escapedHeading = (text: string): string => text.replaceAll("(", OPEN).replaceAll(")", CLOSE);

type TreeBuilder = typeof Lexer.prototype.treeBuilder;

const wrapped = new WeakSet<TreeBuilder>();

/**
 * The engine takes the round brackets in Bays[Eave (ft)] for a call, and knows few of the blocks that a reference to a table may
 * mean (`tableParts.ts`). So headings reach it with other signs, from the table and from
 * the formula alike; nothing of it is ever shown. Lasts for the life of the page or process; a second call changes nothing.
 */
export const escapeTableHeadings = (): void => {
  const original = Lexer.prototype.treeBuilder;
  if (wrapped.has(original)) return;
  const treeBuilder: TreeBuilder = function (this: Lexer, formula, ...rest) {
    const readable = formula.includes("[")
      ? formulaOf(
          withTableParts(tokensOf(formula)).map((token) =>
            token.kind === "bracket" ? { ...token, text: escapedHeading(token.text) } : token,
          ),
        )
      : formula;
    return original.call(this, readable, ...rest);
  };
  wrapped.add(treeBuilder);
  Lexer.prototype.treeBuilder = treeBuilder;
};
