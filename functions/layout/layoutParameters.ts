import { DEFAULT_START } from "../../shared/layoutStart";
import { flag } from "../../shared/kinds/flag";
import { layoutStart } from "../../shared/kinds/layoutStart";
import { openings } from "../../shared/kinds/openings";
import { outline } from "../../shared/kinds/outline";
import { panelBlock } from "../../shared/kinds/panelBlock";
import { omittable, optional, required } from "../../shared/spec/spec";

/** The parameters of every layout function: the plane, the panel, and the openings. */
export const PLANE_PARAMETERS = [
  required(
    "outline",
    outline,
    "Two columns, x and y in feet on the slope, one row per corner, with the eave lowest.",
  ),
  required("panel", panelBlock, "The block on the Panel sheet: two columns, label and value."),
  omittable(
    "openings",
    openings,
    "Chimneys and skylights: outlines like that of the roof, with a blank row between them.",
  ),
] as const;

/** How to lay it out. */
export const LAYING_PARAMETERS = [
  optional(
    "start",
    layoutStart,
    "Side to lay from, a shift in inches that moves every joint away from it, and the stagger step at the eave: left 3 1/4 from step 2.",
    DEFAULT_START,
  ),
  optional(
    "reuse",
    flag,
    "TRUE cuts two pieces from one panel where it can; FALSE uses a new panel for every piece.",
    true,
  ),
] as const;

export const TAPE_PARAMETER = optional("tape", flag, "TRUE adds columns of tape text.", false);
