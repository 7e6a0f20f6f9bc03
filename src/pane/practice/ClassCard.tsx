import { Button } from "@fluentui/react-button";
import { useRef, useState } from "preact/hooks";
import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { failureInWords } from "../../failureInWords";
import { checkClass, LIMITS } from "../../practice/classOptions";
import { ChoiceField, choicesOf, type Choice } from "../controls/ChoiceField";
import { TextField } from "../controls/TextField";
import type { HandOut } from "../paneHost";
import { classOptionsOf, newSeed, type ClassForm } from "./classForm";
import { TopicChoices } from "./TopicChoices";
import { Progress } from "../Progress";

const SETS: readonly Choice<ClassForm["set"]>[] = [
  { value: "topics", label: "problems by topic" },
  { value: "course", label: "full day's course, one roof" },
];

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
    if (progress) return;
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
        <ChoiceField
          label="Set"
          name="class-set"
          value={form.set}
          choices={SETS}
          onValue={(set) => {
            change({ set });
          }}
        />
        <ChoiceField
          label="Level"
          name="class-level"
          value={form.level}
          choices={choicesOf(LEVELS)}
          onValue={(level) => {
            change({ level });
          }}
        />
        <ChoiceField
          label="Units"
          name="class-units"
          value={form.units}
          choices={choicesOf(UNITS)}
          onValue={(units) => {
            change({ units });
          }}
        />
        {form.set === "topics" && (
          <>
            <TopicChoices
              picked={form.topics}
              onPick={(topics) => {
                change({ topics });
              }}
            />
            <TextField
              label="Problems"
              type="number"
              name="class-problems"
              min={1}
              max={LIMITS.problems}
              value={form.problems}
              onValue={(problems) => {
                change({ problems });
              }}
            />
          </>
        )}
        <TextField
          label="Versions (A, B, C…)"
          type="number"
          name="class-versions"
          min={1}
          max={LIMITS.versions}
          value={form.versions}
          onValue={(versions) => {
            change({ versions });
          }}
        />
        <TextField
          label="Seed"
          name="class-seed"
          value={form.seed}
          onValue={(seed) => {
            change({ seed });
          }}
        />
        <p class="hint">
          A class comes out the same only with the same topics, number of problems, level and units as well.
        </p>
        <Button
          onClick={() => {
            change({ seed: newSeed() });
          }}
        >
          Another seed
        </Button>
        <Button appearance="primary" type="submit" disabledFocusable={progress !== undefined}>
          {progress ? "Working…" : handOut.action}
        </Button>
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
