import type { Field } from "../../sheets/extend/resultOptions";
import { TextField } from "../controls/TextField";

/** What a person typed, by the fields' keys. */
export type Typed = Readonly<Record<string, string>>;

interface Props {
  readonly fields: readonly Field[];
  readonly typed: Typed;
  /** Nothing can be written without what the functions require. */
  readonly areNeeded: boolean;
  readonly onChange: (typed: Typed) => void;
}

/** Values that neither a column nor the panel sheet gives; each asked for once. */
export const TypedFields = ({ fields, typed, areNeeded, onChange }: Props) => {
  const byKey = new Map(fields.map((field) => [field.key, field]));
  return (
    <>
      {[...byKey.values()].map(({ key, label, parameter }) => (
        <TextField
          key={key}
          label={`${label}${areNeeded && !parameter.optional ? " (needed)" : ""}`}
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
