/** @jsxImportSource react */
import { Field } from "@fluentui/react-field";
import { Input } from "@fluentui/react-input";

interface Props {
  readonly label: string;
  readonly name?: string;
  readonly value: string;
  readonly type?: "text" | "date" | "number" | "search";
  /** For a number. */
  readonly min?: number;
  readonly max?: number;
  readonly placeholder?: string;
  readonly title?: string;
  /** The id of the element that explains the field. */
  readonly describedBy?: string;
  readonly onValue: (value: string) => void;
}

/** A labeled field for one line of text. */
export const TextField = ({ label, describedBy, onValue, ...input }: Props) => (
  <Field label={label}>
    <Input
      {...input}
      autoComplete="off"
      aria-describedby={describedBy}
      onChange={(_, { value }) => {
        onValue(value);
      }}
    />
  </Field>
);
