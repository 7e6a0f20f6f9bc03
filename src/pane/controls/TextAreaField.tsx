/** @jsxImportSource react */
import { Field } from "@fluentui/react-field";
import { Textarea } from "@fluentui/react-textarea";

interface Props {
  readonly label: string;
  readonly name: string;
  readonly rows: number;
  readonly value: string;
  readonly onValue: (value: string) => void;
}

/** A labeled field for several lines of text. */
export const TextAreaField = ({ label, name, rows, value, onValue }: Props) => (
  <Field label={label}>
    <Textarea
      name={name}
      rows={rows}
      value={value}
      onChange={(_, { value: typed }) => {
        onValue(typed);
      }}
    />
  </Field>
);
