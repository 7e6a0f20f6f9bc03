import { catalog } from "../../../functions/index";
import { registerWithExcel } from "./customFunctions/register";

/** The bundle that Excel's shared runtime loads. */
registerWithExcel(catalog, CustomFunctions);
