import { catalog } from "../../../../functions/index";
import { customFunction } from "./customFunction";

/** The whole catalog in this host's words. */
export const localCatalog = catalog.map(customFunction);
