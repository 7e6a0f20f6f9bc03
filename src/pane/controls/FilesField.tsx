/** @jsxImportSource react */
import { Field } from "@fluentui/react-field";

interface Props {
  readonly label: string;
  readonly name: string;
  /** The endings that are taken: `.xlsx,.xlsm` */
  readonly accept: string;
  readonly multiple?: boolean;
  readonly disabled: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** Files from the person's machine. */
export const FilesField = ({ label, onFiles, ...input }: Props) => (
  <Field label={label}>
    {(field) => (
      <input
        {...field}
        {...input}
        type="file"
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same files can be chosen again.
          currentTarget.value = "";
          if (files.length > 0) onFiles(files);
        }}
      />
    )}
  </Field>
);
