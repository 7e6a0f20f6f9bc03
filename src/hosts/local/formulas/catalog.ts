import { catalog } from "../../../../functions/index";
import { runnable } from "./runnable";

/** The whole catalog in this host's words. */
export const localCatalog = catalog.map(runnable);
