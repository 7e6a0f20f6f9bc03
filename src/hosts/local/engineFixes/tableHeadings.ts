import { Lexer } from "@univerjs/engine-formula";
import { withTableParts } from "./tableParts";
import { formulaOf, tokensOf } from "../../../workbook/formulas/tokens";

/** Private-use characters, so no heading contains them. */
const OPEN = "\ue000";
const CLOSE = "\ue001";

/** A table heading, or a reference to headings in brackets, without the parentheses that the engine misreads. */
export const escapedHeading = (text: string): string => text.replaceAll("(", OPEN).replaceAll(")", CLOSE);

type TreeBuilder = typeof Lexer.prototype.treeBuilder;

const wrapped = new WeakSet<TreeBuilder>();

/**
 * The engine reads the parentheses in Bays[Eave (ft)] as a function call, and supports few of the sections of a structured reference
 * (`tableParts.ts`). The fix replaces them in the table's headings and in the formula that the engine parses; neither is ever shown.
 * Lasts for the life of the page or process; a second call changes nothing.
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
