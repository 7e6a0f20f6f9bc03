/** @jsxImportSource react */
import { Checkbox } from "@fluentui/react-checkbox";

interface Props {
  readonly label: string;
  readonly name: string;
  readonly isTicked: boolean;
  readonly onTick: (isTicked: boolean) => void;
}

/** A box to tick. */
export const Tick = ({ label, name, isTicked, onTick }: Props) => (
  <Checkbox
    label={label}
    name={name}
    checked={isTicked}
    onChange={(_, { checked }) => {
      onTick(checked === true);
    }}
  />
);
