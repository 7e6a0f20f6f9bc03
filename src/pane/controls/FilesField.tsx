/** @jsxImportSource react */
import { Field } from "@fluentui/react-field";
import type { RefObject } from "react";

interface Props {
  readonly label: string;
  readonly name: string;
  /** The endings that are taken: `.xlsx,.xlsm` */
  readonly accept: string;
  readonly multiple?: boolean;
  readonly disabled: boolean;
  readonly onFiles: (files: readonly File[]) => void;
  /** To give the keyboard back to it. */
  readonly inputRef?: RefObject<HTMLInputElement>;
}

/** Files from the person's machine. */
export const FilesField = ({ label, disabled, onFiles, inputRef, ...input }: Props) => (
  <Field label={label}>
    {(field) => (
      <input
        {...field}
        {...input}
        ref={inputRef}
        type="file"
        // A field that is disabled loses the keyboard.
        aria-disabled={disabled}
        onClick={(event) => {
          if (disabled) event.preventDefault();
        }}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same files can be chosen again.
          currentTarget.value = "";
          // They can be dropped on it, too.
          if (files.length > 0 && !disabled) onFiles(files);
        }}
      />
    )}
  </Field>
);
