import { a1 } from "../../workbook/address";
import { isEmpty } from "../../workbook/formula";
import { panelFieldName } from "../panelSheet";
import { DECK_LINES, type DeckLine } from "./deckLines";
import type { TakeoffLayout } from "./takeoffLayout";

export const DECK_VALUE = 2;

export const deckCell = ({ deck }: TakeoffLayout, line: DeckLine): string =>
  a1({ row: deck + DECK_LINES.indexOf(line), column: DECK_VALUE });

/** A typed value in inches, or the panel sheet's value if the cell is blank. */
export const orPanelValue = (cell: string, field: Parameters<typeof panelFieldName>[0]): string =>
  `IF(${isEmpty(cell)},${panelFieldName(field)},${cell})`;
