import { starterListSpec } from "../../../functions/stagger/starterList";
import { a1 } from "../address";
import { call } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, text, type PlannedCell } from "../plan";
import type { TakeOffLayout } from "./layout";
import type { PlaneInput } from "./options";
import { planeColumn } from "./planes";

/** The starters of the gable edge that a person picks: cut and bent on the ground. */
export const starterSection = (layout: TakeOffLayout, planes: readonly PlaneInput[]): PlannedCell[] => {
  const titleRow = layout.starters - 2;
  const pickRow = layout.starters - 1;
  const [label, picked] = [0, 1];
  const pickedCell = a1({ row: pickRow, column: picked });
  const slope = `INDEX(${planeColumn(layout, "slopeUsed")},MATCH(${pickedCell},${planeColumn(layout, "name")},0))`;
  const fields = (
    ["exposedHeightIn", "exposedWidthIn", "gableSetbackIn", "gableFoldIn", "staggerPattern"] as const
  ).map(panelFieldName);
  const first = planes.find(({ gableEdges }) => gableEdges !== undefined && gableEdges > 0) ?? planes[0];
  return [
    {
      row: titleRow,
      column: 0,
      content: text("5  Starters for one gable edge, to cut and bend on the ground"),
      style: "section",
    },
    { row: pickRow, column: label, content: text("Plane"), style: "label" },
    { row: pickRow, column: picked, content: first ? text(first.name) : null, style: "input" },
    {
      row: layout.starters,
      column: 0,
      content: formula(`=IF(${pickedCell}="","",${call(starterListSpec, slope, ...fields)})`),
      style: "result",
    },
  ];
};
