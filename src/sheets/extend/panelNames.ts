import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import type { PANEL_FIELDS } from "../../../shared/kinds/panel";
import { panelFieldName } from "../panelSheet";

type FieldKey = keyof typeof PANEL_FIELDS;

/** Parameters that the panel sheet gives, by what the functions call them. */
const FIELD_OF_PARAMETER: Readonly<Record<string, FieldKey>> = {
  exposureIn: "exposedHeightIn",
  panelWidthIn: "exposedWidthIn",
  setbackIn: "gableSetbackIn",
  foldIn: "gableFoldIn",
  pattern: "staggerPattern",
  minimum: "minimumPitch",
  stockIn: "trimStockIn",
  lapIn: "trimLapIn",
  rollWidthIn: "rollWidthIn",
  rollLengthIn: "rollLengthIn",
  headLapIn: "headLapIn",
  endLapIn: "endLapIn",
  wrapIn: "edgeWrapIn",
};

/** Clips and nails are spaced differently. */
const SPACING_OF_FUNCTION: Readonly<Record<string, FieldKey>> = {
  CLIPCOUNT: "trimClipSpacingIn",
  NAILCOUNT: "eaveNailSpacingIn",
};

export const panelFieldOf = ({ id }: FunctionSpec, { name }: Parameter<unknown>): FieldKey | undefined =>
  name === "spacingIn" ? SPACING_OF_FUNCTION[id] : FIELD_OF_PARAMETER[name];

/** The name under which a workbook with a panel sheet has the value. */
export const panelNameFor = (spec: FunctionSpec, parameter: Parameter<unknown>): string | undefined => {
  const field = panelFieldOf(spec, parameter);
  return field && panelFieldName(field);
};
