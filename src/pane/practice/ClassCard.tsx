import { Button } from "@fluentui/react-button";
import { LEVELS, type Level } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { InputError } from "../../../shared/inputError";
import { checkClass, fileTitle, LIMITS } from "../../practice/class/classOptions";
import { ChoiceField, choicesOf, type Choice } from "../controls/ChoiceField";
import { TextField } from "../controls/TextField";
import type { HandOut } from "../parts/paneHost";
import { classOptionsOf, newSeed, type ClassForm } from "./classForm";
import { TopicChoices } from "./TopicChoices";
import { OutcomeLine } from "../parts/OutcomeLine";
import { Progress } from "../parts/Progress";
import { useProgress } from "../parts/useProgress";
import { useOutcome } from "../parts/useOutcome";

const SETS: readonly Choice<ClassForm["set"]>[] = [
  { value: "topics", label: "problems by topic" },
  { value: "course", label: "full-day course, one roof" },
];

/** What each level asks. */
const LEVEL_HINTS: Readonly<Record<Level, string>> = {
  "first hour": "round measurements, the first questions of each topic",
  "half day": "quarter inches or 5 mm, more questions",
  "full roof": "sixteenths or millimeters, every question",
};

interface Props {
  readonly handOut: HandOut;
  readonly form: ClassForm;
  readonly onForm: (form: ClassForm) => void;
}

/** Builds practice sheets for a class: one file per version, and the answer key. */
export const ClassCard = ({ handOut, form, onForm }: Props) => {
  const { isBusy, outcome, attempt, forget } = useOutcome();
  const { working, withProgress } = useProgress();
  const change = (changed: Partial<ClassForm>): void => {
    onForm({ ...form, ...changed });
    // The message is about the class as it was; and only the browser reports text in a number field.
    forget();
  };

  const run = (): Promise<void> =>
    attempt(async () => {
      const options = classOptionsOf(form);
      checkClass(options);
      const refusal = handOut.refusal?.(options.versions + 1);
      if (refusal !== undefined) throw new InputError(refusal);
      const { buildClass } = await import("./practiceTasks");
      const files = await withProgress("Files built", "Canceled: no files were built.", (built) =>
        buildClass(options, built),
      );
      return { message: await handOut.deliver(fileTitle(options), files) };
    });

  return (
    <section class="card" aria-labelledby="class-title">
      <h2 id="class-title">Class</h2>
      <p>
        Practice sheets: one workbook per version with one page per problem, and the answer key in a separate
        file. Seed, topics, number of problems, level and units are printed on every sheet. Enter the same
        ones here to build the same class again, with its answer key.
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
          hint={LEVEL_HINTS[form.level]}
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
        <Button
          onClick={() => {
            change({ seed: newSeed() });
          }}
        >
          New seed
        </Button>
        <Button appearance="primary" type="submit" disabledFocusable={isBusy}>
          {isBusy ? "Working…" : handOut.action}
        </Button>
      </form>
      {working && <Progress {...working} />}
      <OutcomeLine outcome={outcome} />
    </section>
  );
};
