import { useState } from "preact/hooks";
import { isMatrix, type Argument, type Cell } from "../../shared/cell";
import { runFunction } from "../../shared/spec/runner";
import type { FunctionSpec } from "../../shared/spec/spec";
import { typedCell } from "../workbook/typedCell";
import { Answer } from "./Answer";
import { formulaText } from "./formulaText";

const asTyped = (cell: Cell): string =>
  cell === null ? "" : typeof cell === "boolean" ? (cell ? "TRUE" : "FALSE") : String(cell);

/** The worked example: single values can be changed, and the result follows. */
export const Example = ({ spec }: { spec: FunctionSpec }) => {
  const [first] = spec.examples;
  const [args, setArgs] = useState<readonly Argument[]>(first?.args ?? []);
  const change = (index: number, typed: string): void => {
    setArgs(args.map((each, at) => (at === index ? typedCell(typed) : each)));
  };
  return (
    <form
      class="example"
      onSubmit={(event) => {
        event.preventDefault();
      }}
    >
      {args.map((argument, index) => {
        const name = spec.parameters[index]?.name ?? "";
        return isMatrix(argument) ? (
          <p key={name}>
            {name}: a range of {argument.length} rows
          </p>
        ) : (
          <label key={name}>
            {name}
            <input
              value={asTyped(argument ?? null)}
              autocomplete="off"
              onInput={(event) => {
                change(index, event.currentTarget.value);
              }}
            />
          </label>
        );
      })}
      <code>{formulaText(spec, args)}</code>
      <output aria-live="polite">
        <Answer answer={runFunction(spec, args)} unit={spec.result.unit} />
      </output>
      {first && args === first.args && <p class="from">{first.from}</p>}
    </form>
  );
};
