/** The parameter's name as a sentence says it: without the unit that its end carries. */
export const parameterLabel = (name: string): string => name.replace(/(?:Ft|In|SqFt|Degrees)$/, "");
