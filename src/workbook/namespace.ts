/** The namespace under which every host knows our functions. */
export const NAMESPACE = "GABLE";

/** A function's whole name, as it is typed: `GABLE.COURSES`. */
export const qualifiedName = ({ id }: { readonly id: string }): string => `${NAMESPACE}.${id}`;
