import type { Host } from "../workbook/host";
import { addFieldSheet } from "../sheets/fieldSheet/addFieldSheet";
import { BuildCard } from "./parts/BuildCard";

/** Builds the crew's page for the active plane. */
export const FieldSheetCard = ({ host }: { host: Host }) => (
  <BuildCard
    id="field-sheet"
    title="Field sheet"
    summary="For the crew, one page per plane: chalk lines, pieces to cut and bend on the ground, and room for the picture. First select a plane's row on a takeoff; otherwise the sheet is blank, to fill in by hand."
    action="Build field sheet"
    build={() => addFieldSheet(host)}
  />
);
