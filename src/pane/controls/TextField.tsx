/** @jsxImportSource react */
import { Field } from "@fluentui/react-field";
import { Input } from "@fluentui/react-input";

interface Props {
  readonly label: string;
  readonly name?: string;
  readonly value: string;
  readonly type?: "text" | "date" | "number" | "search";
  /** Of a number. */
  readonly min?: number;
  readonly max?: number;
  readonly placeholder?: string;
  readonly title?: string;
  /** The element that explains it, by its id. */
  readonly describedBy?: string;
  readonly onValue: (value: string) => void;
}

/** A line to type in, under its label. */
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
