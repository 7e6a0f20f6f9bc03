import { CellError, type Answer, type Argument } from "../../shared/cell";
import { runFunction } from "../../shared/spec/runner";
import { catalog } from "../../functions/index";
import type { FunctionSpec } from "../../shared/spec/spec";

export const specOf = (id: string): FunctionSpec => {
  const spec = catalog.find((each) => each.id === id);
  if (!spec) throw new Error(`no function ${id}`);
  return spec;
};

/** Calls a function as a host does, through the runner. */
export const call = (id: string, ...args: Argument[]): Answer => runFunction(specOf(id), args);

/** The answer as a number; anything else fails the test and shows the answer. */
export const callForNumber = (id: string, ...args: Argument[]): number => {
  const answer = call(id, ...args);
  if (typeof answer !== "number") throw new Error(`${id} answered ${JSON.stringify(answer)}`);
  return answer;
};

/** The message of the error that a call gives. */
export const callForSentence = (id: string, ...args: Argument[]): string => {
  const answer = call(id, ...args);
  if (!(answer instanceof CellError))
    throw new Error(`${id} answered ${JSON.stringify(answer)}, not an error`);
  return `${answer.code} ${answer.message}`;
};
