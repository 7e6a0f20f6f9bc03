/** @jsxImportSource react */
import { Field } from "@fluentui/react-field";
import type { RefObject } from "react";

interface Props {
  readonly label: string;
  readonly name: string;
  /** Accepted file extensions: `.xlsx,.xlsm` */
  readonly accept: string;
  readonly multiple?: boolean;
  readonly disabled: boolean;
  readonly onFiles: (files: readonly File[]) => void;
  /** To return the focus to it. */
  readonly inputRef?: RefObject<HTMLInputElement>;
}

/** Chooses files from the user's computer. */
export const FilesField = ({ label, disabled, onFiles, inputRef, ...input }: Props) => (
  <Field label={label}>
    {(field) => (
      <input
        {...field}
        {...input}
        ref={inputRef}
        type="file"
        // A disabled field would lose the focus.
        aria-disabled={disabled}
        onClick={(event) => {
          if (disabled) event.preventDefault();
        }}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // So that the same files can be chosen again.
          currentTarget.value = "";
          // Files can also be dropped on a field that looks disabled.
          if (files.length > 0 && !disabled) onFiles(files);
        }}
      />
    )}
  </Field>
);
