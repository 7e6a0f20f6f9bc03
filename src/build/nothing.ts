/** Replaces modules that the page never uses. */
export default undefined;
