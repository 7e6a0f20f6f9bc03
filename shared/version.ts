import product from "../package.json";

/** Gablewright's, as it was built. */
export const VERSION: string = product.version;
