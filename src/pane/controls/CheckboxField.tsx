/** @jsxImportSource react */
import { Checkbox } from "@fluentui/react-checkbox";

interface Props {
  readonly label: string;
  readonly name: string;
  readonly isChecked: boolean;
  readonly onCheck: (isChecked: boolean) => void;
}

/** A labeled checkbox. */
export const CheckboxField = ({ label, name, isChecked, onCheck }: Props) => (
  <Checkbox
    label={label}
    name={name}
    checked={isChecked}
    onChange={(_, { checked }) => {
      onCheck(checked === true);
    }}
  />
);
