import { DEFAULT_START } from "../../shared/layoutStart";
import { flag } from "../../shared/kinds/flag";
import { layoutStart } from "../../shared/kinds/layoutStart";
import { openings } from "../../shared/kinds/openings";
import { outline } from "../../shared/kinds/outline";
import { panelBlock } from "../../shared/kinds/panelBlock";
import { omittable, optional, required } from "../../shared/spec/spec";

/** What every function of a layout asks for: the plane, the panel, and what isn't roof. */
export const PLANE_PARAMETERS = [
  required("outline", outline, "Two columns, x and y in feet on the slope, a row a corner; the eave lowest."),
  required("panel", panelBlock, "The panel sheet's block: two columns, label and value."),
  omittable(
    "openings",
    openings,
    "Chimneys, skylights: outlines like the roof's, a blank row between two of them.",
  ),
] as const;

/** How a given layout is laid. */
export const LAYING_PARAMETERS = [
  optional(
    "start",
    layoutStart,
    "Side to lay from; a shift in inches moves every joint away from it; the eave's step of the stagger: left 3 1/4 from step 2.",
    DEFAULT_START,
  ),
  optional(
    "reuse",
    flag,
    "FALSE opens a panel for every piece; TRUE cuts two pieces from one where it can.",
    true,
  ),
] as const;

export const TAPE_PARAMETER = optional("tape", flag, "TRUE adds columns of tape text.", false);
