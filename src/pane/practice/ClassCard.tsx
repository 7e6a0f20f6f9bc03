import { useRef, useState } from "preact/hooks";
import { LEVELS, type Level } from "../../../functions/practice/level";
import { UNITS, type Units } from "../../../functions/practice/measuring";
import { failureInWords } from "../../failureInWords";
import { checkClass, LIMITS } from "../../practice/classOptions";
import type { HandOut } from "../paneHost";
import { classOptionsOf, newSeed, type ClassForm } from "./classForm";
import { TopicChoices } from "./TopicChoices";
import { Progress } from "../Progress";

interface Props {
  readonly handOut: HandOut;
  readonly form: ClassForm;
  readonly onForm: (form: ClassForm) => void;
}

interface Outcome {
  readonly kind: "written" | "failed";
  readonly message: string;
}

/** Files are counted while they are built; undefined: none is. */
interface Progress {
  readonly built: number;
  readonly of: number;
}

/** Makes practice sheets for a class: a file for each version, and the key. */
export const ClassCard = ({ handOut, form, onForm }: Props) => {
  const [progress, setProgress] = useState<Progress>();
  const [outcome, setOutcome] = useState<Outcome>();
  const isGivenUp = useRef(false);
  const change = (changed: Partial<ClassForm>): void => {
    onForm({ ...form, ...changed });
  };

  const build = async (): Promise<Outcome> => {
    const options = classOptionsOf(form);
    checkClass(options);
    const of = options.versions + 1;
    const refusal = handOut.refusal?.(of);
    if (refusal !== undefined) return { kind: "failed", message: refusal };
    setProgress({ built: 0, of });
    const { buildClass } = await import("./tasks");
    const files = await buildClass(
      options,
      (built) => {
        setProgress({ built, of });
      },
      () => isGivenUp.current,
    );
    if (!files) return { kind: "written", message: "Given up: nothing was made." };
    return { kind: "written", message: await handOut.deliver(`practice-${options.seed}`, files) };
  };

  const run = async (): Promise<void> => {
    isGivenUp.current = false;
    setOutcome(undefined);
    try {
      setOutcome(await build());
    } catch (failure) {
      setOutcome({ kind: "failed", message: failureInWords(failure) });
    } finally {
      setProgress(undefined);
    }
  };

  return (
    <section class="card" aria-labelledby="class-title">
      <h2 id="class-title">Class</h2>
      <p>
        Practice sheets: a workbook for each version, a page a problem, and the key in a file of its own. The
        seed is printed on every sheet: whoever has Gablewright can make the class again with it, and the key.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void run();
        }}
      >
        <label>
          Set
          <select
            name="class-set"
            value={form.set}
            onChange={({ currentTarget: { value } }) => {
              change({ set: value as ClassForm["set"] });
            }}
          >
            <option value="topics">problems by topic</option>
            <option value="course">full day's course, one roof</option>
          </select>
        </label>
        <label>
          Level
          <select
            name="class-level"
            value={form.level}
            onChange={({ currentTarget: { value } }) => {
              change({ level: value as Level });
            }}
          >
            {LEVELS.map((level) => (
              <option key={level}>{level}</option>
            ))}
          </select>
        </label>
        <label>
          Units
          <select
            name="class-units"
            value={form.units}
            onChange={({ currentTarget: { value } }) => {
              change({ units: value as Units });
            }}
          >
            {UNITS.map((units) => (
              <option key={units}>{units}</option>
            ))}
          </select>
        </label>
        {form.set === "topics" && (
          <>
            <TopicChoices
              picked={form.topics}
              onPick={(topics) => {
                change({ topics });
              }}
            />
            <label>
              Problems
              <input
                type="number"
                name="class-problems"
                min={1}
                max={LIMITS.problems}
                value={form.problems}
                onInput={({ currentTarget: { value } }) => {
                  change({ problems: value });
                }}
              />
            </label>
          </>
        )}
        <label>
          Versions (A, B, C…)
          <input
            type="number"
            name="class-versions"
            min={1}
            max={LIMITS.versions}
            value={form.versions}
            onInput={({ currentTarget: { value } }) => {
              change({ versions: value });
            }}
          />
        </label>
        <label>
          Seed
          <input
            name="class-seed"
            value={form.seed}
            onInput={({ currentTarget: { value } }) => {
              change({ seed: value });
            }}
          />
        </label>
        <p class="hint">
          A class comes out the same only with the same topics, number of problems, level and units as well.
        </p>
        <button
          type="button"
          class="quiet"
          onClick={() => {
            change({ seed: newSeed() });
          }}
        >
          Another seed
        </button>
        <button type="submit" disabled={progress !== undefined}>
          {progress ? "Working…" : handOut.action}
        </button>
      </form>
      {progress && (
        <Progress
          words="Files built"
          share={progress.built / progress.of}
          onCancel={() => {
            isGivenUp.current = true;
          }}
        />
      )}
      <p role="status" class={`outcome ${outcome?.kind ?? ""}`}>
        {outcome?.message}
      </p>
    </section>
  );
};
