import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import type { PANEL_FIELDS } from "../../../shared/kinds/panel";
import { panelFieldName } from "../panelSheet";

type FieldKey = keyof typeof PANEL_FIELDS;

/** The panel field that each parameter takes, by the parameter's name. */
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

/** Clips and nails have different spacings. */
const SPACING_OF_FUNCTION: Readonly<Record<string, FieldKey>> = {
  CLIPCOUNT: "trimClipSpacingIn",
  NAILCOUNT: "eaveNailSpacingIn",
};

export const panelFieldOf = ({ id }: FunctionSpec, { name }: Parameter<unknown>): FieldKey | undefined =>
  name === "spacingIn" ? SPACING_OF_FUNCTION[id] : FIELD_OF_PARAMETER[name];

/** The defined name of the parameter's value in a workbook with a panel sheet. */
export const panelNameFor = (spec: FunctionSpec, parameter: Parameter<unknown>): string | undefined => {
  const field = panelFieldOf(spec, parameter);
  return field && panelFieldName(field);
};
