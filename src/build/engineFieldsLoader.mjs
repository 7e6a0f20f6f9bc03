import { withFieldHelpers } from "./engineFields.mjs";

/** The webpack loader of the spreadsheet engine's packages. */
export default withFieldHelpers;
