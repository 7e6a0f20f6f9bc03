import type { Field } from "../../sheets/extend/resultOptions";
import { TextField } from "../controls/TextField";

/** Typed values, by field key. */
export type Typed = Readonly<Record<string, string>>;

interface Props {
  readonly fields: readonly Field[];
  readonly typed: Typed;
  /** Whether required values are marked as such. */
  readonly areRequiredMarked: boolean;
  readonly onChange: (typed: Typed) => void;
}

/** Fields for values that neither a column nor the panel sheet gives, one per value. */
export const TypedFields = ({ fields, typed, areRequiredMarked, onChange }: Props) => {
  const byKey = new Map(fields.map((field) => [field.key, field]));
  return (
    <>
      {[...byKey.values()].map(({ key, label, parameter }) => (
        <TextField
          key={key}
          label={`${label}${areRequiredMarked && !parameter.optional ? " (needed)" : ""}`}
          name={`extend-${key}`}
          value={typed[key] ?? ""}
          placeholder={parameter.default === null ? undefined : String(parameter.default)}
          title={parameter.summary}
          onValue={(value) => {
            onChange({ ...typed, [key]: value });
          }}
        />
      ))}
    </>
  );
};
