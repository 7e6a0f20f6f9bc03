import type { Host } from "../hosts/host";
import { addFieldSheet } from "../sheets/fieldSheet/addFieldSheet";
import { BuildCard } from "./BuildCard";

/** Builds the crew's page for the plane in view. */
export const FieldSheetCard = ({ host }: { host: Host }) => (
  <BuildCard
    id="field-sheet"
    title="Field sheet"
    summary="For the crew, one plane to a page: chalk lines, pieces to cut and bend on the ground, room for the picture. For the plane whose row is selected on a take-off, or empty."
    action="Build field sheet"
    build={() => addFieldSheet(host)}
  />
);
