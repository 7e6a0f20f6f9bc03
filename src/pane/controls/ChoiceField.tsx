/** @jsxImportSource react */
import { Field } from "@fluentui/react-field";
import { Select, type SelectProps } from "@fluentui/react-select";

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

interface Props<Value extends string> {
  readonly label: string;
  /** The label is for screen readers only; the surrounding text shows it. */
  readonly isLabelHidden?: boolean;
  readonly name?: string;
  readonly value: Value | undefined;
  readonly choices: readonly Choice<Value>[];
  /** Explains the choice, if its name isn't enough. */
  readonly hint?: string;
  readonly onValue: (value: Value) => void;
}

/** A drop-down list. */
export const ChoiceField = <Value extends string>({
  label,
  isLabelHidden = false,
  name,
  value,
  choices,
  hint,
  onValue,
}: Props<Value>) => {
  const select: SelectProps = {
    name,
    value,
    // Only listed values can be picked.
    onChange: (_, picked) => {
      onValue(picked.value as Value);
    },
    children: choices.map((choice) => (
      <option key={choice.value} value={choice.value}>
        {choice.label}
      </option>
    )),
  };
  return isLabelHidden ? (
    <Select {...select} aria-label={label} />
  ) : (
    <Field label={label} hint={hint}>
      <Select {...select} />
    </Field>
  );
};

/** Choices whose labels are their values. */
export const choicesOf = <Value extends string>(names: readonly Value[]): Choice<Value>[] =>
  names.map((name) => ({ value: name, label: name }));
