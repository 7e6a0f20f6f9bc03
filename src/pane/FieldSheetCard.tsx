import type { Host } from "../workbook/host";
import { addFieldSheet } from "../sheets/fieldSheet/addFieldSheet";
import { BuildCard } from "./parts/BuildCard";

/** Builds the crew's page for the plane in view. */
export const FieldSheetCard = ({ host }: { host: Host }) => (
  <BuildCard
    id="field-sheet"
    title="Field sheet"
    summary="For the crew, one plane to a page: chalk lines, pieces to cut and bend on the ground, room for the picture. Select a plane's row on a takeoff first; without one the sheet comes blank, to fill in by hand."
    action="Build field sheet"
    build={() => addFieldSheet(host)}
  />
);
