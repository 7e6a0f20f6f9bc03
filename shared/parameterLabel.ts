import { NAME_ENDINGS } from "./kinds/kind";

const ENDING = new RegExp(`(?:${NAME_ENDINGS.join("|")})$`);

/** The parameter's name as a sentence says it: without the unit that its end carries. */
export const parameterLabel = (name: string): string => name.replace(ENDING, "");
