import { UNIT_OF_NAME_ENDING } from "../kinds/kind";
import type { Parameter } from "./spec";

/** A parameter's label in plain words: `slopeLength` becomes "slope length". */
export const labelInWords = (label: string): string =>
  label.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** What a form calls a parameter: `slopeLengthFt` becomes "Slope length (ft)". */
export const parameterCaption = ({ label, kind }: Parameter<unknown>): string => {
  const words = labelInWords(label);
  const name = words.charAt(0).toUpperCase() + words.slice(1);
  return kind.nameEnding ? `${name} (${UNIT_OF_NAME_ENDING[kind.nameEnding]})` : name;
};
