import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import { isBlank } from "../../../shared/cell";
import { runFunction } from "../../../shared/spec/runner";
import type { FunctionSpec } from "../../../shared/spec/spec";
import { Answer } from "../../help/Answer";
import type { Host } from "../../workbook/host";
import { valuesIn } from "../../workbook/contents";
import type { Survey } from "../../workbook/survey";
import {
  argumentsOf,
  formulaOf,
  insertPlan,
  isNameOf,
  NOTHING,
  placeInWords,
  type Given,
} from "../../sheets/extend/insertFunction";
import type { CellPatch } from "../../workbook/patch";
import { errorMessage } from "../../workbook/errorMessage";
import { ArgumentField } from "./ArgumentField";

interface Props {
  readonly host: Host;
  readonly spec: FunctionSpec;
  readonly survey: Survey;
  readonly onInsert: (patch: CellPatch, place: string) => void;
}

/** Selected cells are read again while their sheet is active. */
const refreshed = (given: Given, survey: Survey): Given =>
  given.kind === "cells" && given.sheet === survey.sheet
    ? { ...given, cells: valuesIn(survey, given.area) }
    : given;

const formulaOrSentence = (
  spec: FunctionSpec,
  given: readonly Given[],
  sheet: string,
): { readonly formula?: string; readonly sentence?: string } => {
  try {
    return { formula: formulaOf(spec, given, sheet) };
  } catch (failure) {
    return { sentence: errorMessage(failure) };
  }
};

/** A form for a function's arguments. It shows the result and inserts the formula into the selected cell. */
export const FunctionForm = ({ host, spec, survey, onInsert }: Props) => {
  const [given, setGiven] = useState<readonly Given[]>(() => spec.parameters.map(() => NOTHING));
  const give = (index: number, value: Given): void => {
    setGiven((before) => before.map((each, at) => (at === index ? value : each)));
  };

  const type = async (index: number, typed: string): Promise<void> => {
    give(index, { kind: "typed", typed });
    if (!isNameOf(survey.names, typed)) return;
    const cells = await host.namedRange(typed.trim());
    setGiven((before) =>
      before.map((each, at) =>
        at === index && each.kind === "typed" && each.typed === typed
          ? { kind: "name", name: typed.trim(), cells }
          : each,
      ),
    );
  };

  const now = given.map((each) => refreshed(each, survey));
  const at = survey.selected.from;
  const { formula, sentence } = formulaOrSentence(spec, now, survey.sheet);
  const isUntouched = now.every((each) => each.kind === "typed" && each.typed === "");
  const answer = runFunction(spec, argumentsOf(now));
  const place = placeInWords(survey.sheet, at);
  /** A cell that already has this very formula doesn't count: it was just inserted. */
  const isOccupied =
    !isBlank(survey.cells[at.row]?.[at.column]) && survey.formulas[at.row]?.[at.column] !== formula;

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (formula !== undefined) onInsert(insertPlan(survey.sheet, at, spec, formula, answer), place);
      }}
    >
      {spec.parameters.map((parameter, index) => (
        <ArgumentField
          key={parameter.name}
          parameter={parameter}
          given={now[index] ?? NOTHING}
          onType={(typed) => void type(index, typed)}
          onPick={() => {
            give(index, {
              kind: "cells",
              sheet: survey.sheet,
              area: survey.selected,
              cells: valuesIn(survey, survey.selected),
            });
          }}
        />
      ))}
      <div class="planned" aria-live="polite">
        {sentence !== undefined && (
          <p class="hint">
            {isUntouched
              ? "Type a value, or select cells and click Use selection. Then select a blank cell for the formula."
              : sentence}
          </p>
        )}
        {formula !== undefined && (
          <>
            <p class="cell-formula">{formula}</p>
            <p>
              Result: <Answer answer={answer} unit={spec.result.unit} />
            </p>
            {isOccupied && <p class="hint">{`${place} isn't blank: select a blank cell for the formula.`}</p>}
          </>
        )}
      </div>
      <Button appearance="primary" type="submit" disabledFocusable={formula === undefined}>
        {`Insert into ${place}`}
      </Button>
    </form>
  );
};
