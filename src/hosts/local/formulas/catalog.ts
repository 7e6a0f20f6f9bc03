import { catalog } from "../../../../functions/index";
import { customFunction } from "./customFunction";

/** Every function of the catalog, as the local workbook needs it. */
export const localCatalog = catalog.map(customFunction);
