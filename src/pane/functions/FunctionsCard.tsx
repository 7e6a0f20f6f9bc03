import { useState } from "preact/hooks";
import { catalog } from "../../../functions/index";
import type { FunctionSpec } from "../../../shared/spec/spec";
import { findFunctions } from "../../help/findFunctions";
import type { Host } from "../../workbook/host";
import { qualifiedName } from "../../workbook/namespace";
import type { CellPatch } from "../../workbook/patch";
import { ChoiceField } from "../controls/ChoiceField";
import { TextField } from "../controls/TextField";
import { OutcomeLine } from "../parts/OutcomeLine";
import { useOutcome } from "../parts/useOutcome";
import { FunctionForm } from "./FunctionForm";
import { useSurvey } from "./useSurvey";

const helpAddress = ({ id }: FunctionSpec): string => `help/${id}.html`;

/** Finds a function by what it does, explains it, and inserts it with its arguments. */
export const FunctionsCard = ({ host, isShown }: { host: Host; isShown: boolean }) => {
  const [search, setSearch] = useState("");
  const [id, setId] = useState("COURSES");
  const { outcome, attempt, undo, forget } = useOutcome();
  const survey = useSurvey(host, isShown);

  const { functions: found, matchAll } = findFunctions(catalog, search);
  const spec = found.find((each) => each.id === id) ?? found[0];

  const insert = (patch: CellPatch, place: string): Promise<void> =>
    attempt(async () => {
      const run = await host.putCells(patch);
      return {
        message: `Wrote the formula into ${place}.`,
        undoAction: { run, said: "Undone: the cell is as it was." },
      };
    });

  /** A search selects the best match, even if the function chosen before matches too. */
  const searchFor = (words: string): void => {
    setSearch(words);
    const [best] = words.trim() === "" ? [] : findFunctions(catalog, words).functions;
    if (best) setId(best.id);
    forget();
  };

  return (
    <section class="card" aria-labelledby="functions-title">
      <h2 id="functions-title">Find a function</h2>
      <form
        role="search"
        onSubmit={(event) => {
          event.preventDefault();
        }}
      >
        <TextField
          label="Search by name or by what it does"
          type="search"
          name="function-search"
          value={search}
          onValue={searchFor}
        />
        <ChoiceField
          label={`Function (${found.length} found${matchAll ? "" : "; none matches every word"})`}
          name="function"
          value={spec?.id}
          choices={found.map((each) => ({ value: each.id, label: qualifiedName(each) }))}
          onValue={(value) => {
            setId(value);
            forget();
          }}
        />
      </form>
      {spec ? (
        <>
          <p>{spec.summary}</p>
          <p class="hint">
            {spec.formula}. Source: {spec.source}.{" "}
            <a href={helpAddress(spec)} target="_blank" rel="noreferrer">
              Help and a worked example
            </a>
          </p>
          {survey ? (
            <FunctionForm
              key={spec.id}
              host={host}
              spec={spec}
              survey={survey}
              onInsert={(patch, place) => void insert(patch, place)}
            />
          ) : (
            <p class="hint">The active sheet can't be read right now.</p>
          )}
        </>
      ) : (
        <p class="hint">No function matches these words.</p>
      )}
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </section>
  );
};
