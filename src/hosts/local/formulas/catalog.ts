import { catalogue } from "../../../../functions/index";
import { runnable } from "./runnable";

/** The whole catalogue in this host's words. */
export const localCatalogue = catalogue.map(runnable);
