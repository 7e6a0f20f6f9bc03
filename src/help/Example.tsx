import { useState } from "preact/hooks";
import { isMatrix, type Argument, type Cell } from "../../shared/cell";
import { parameterCaption } from "../../shared/spec/parameterCaption";
import { runFunction } from "../../shared/spec/runner";
import type { FunctionSpec } from "../../shared/spec/spec";
import { typedCell } from "../workbook/typedCell";
import { Answer } from "./Answer";
import { formulaText } from "./formulaText";

const asTyped = (cell: Cell): string =>
  cell === null ? "" : typeof cell === "boolean" ? (cell ? "TRUE" : "FALSE") : String(cell);

/** The worked example. Readers can change its single values and see the new result. */
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
        const parameter = spec.parameters[index];
        const caption = parameter ? parameterCaption(parameter) : "";
        return isMatrix(argument) ? (
          <p key={caption}>
            {caption}: a range of {argument.length} rows
          </p>
        ) : (
          <label key={caption}>
            {caption}
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
