import { ventAreaSpec } from "../../../functions/deck/ventArea";
import { iceBarrierSpec } from "../../../functions/deck/iceBarrier";
import { inchesSpec } from "../../../functions/measure/inches";
import { trimPiecesSpec } from "../../../functions/trim/trimPieces";
import { call, unlessEmpty } from "../../workbook/formula";
import { panelFieldName } from "../panelSheet";
import { ROOF_NAMES } from "../roofSheet/roofSheetNames";
import { formula, text, value, type CellContent, type PlannedCell } from "../../workbook/plan";
import { iceBarrierFeetCell, underlaymentFeetCell } from "./courseSection";
import { DECK_VALUE, deckCell, orPanelValue } from "./deckCells";
import { DECK_LINES, type DeckLine } from "./deckLines";
import type { TakeoffLayout } from "./takeoffLayout";
import type { DeckInput } from "./takeoffOptions";

const [LABEL, NOTE] = [0, 3];

/** A roof from a footprint has an overhang; a plain number there is in feet. */
const OVERHANG_OF_ROOF = unlessEmpty(ROOF_NAMES.eaveOverhang, call(inchesSpec, ROOF_NAMES.eaveOverhang));

interface LineCells {
  readonly label: string;
  readonly content: CellContent | null;
  readonly style: "input" | "result";
  readonly note: string;
  readonly numberFormat?: string;
  readonly choices?: readonly string[];
}

const input = (label: string, typed: string | number | undefined, note: string): LineCells => ({
  label,
  content: typed === undefined ? null : value(typed),
  style: "input",
  note,
});

const result = (label: string, content: string, numberFormat: string, note: string): LineCells => ({
  label,
  content: formula(content),
  style: "result",
  numberFormat,
  note,
});

const linesOf = (layout: TakeoffLayout, typed: DeckInput): Record<DeckLine, LineCells> => {
  const cell = (line: DeckLine): string => deckCell(layout, line);
  const rolls = call(
    trimPiecesSpec,
    cell("iceSheet"),
    orPanelValue(cell("iceLength"), "rollLengthIn"),
    panelFieldName("endLapIn"),
  );
  const isBalanced = `${cell("balanced")}="yes"`;
  const underlayment = call(
    trimPiecesSpec,
    underlaymentFeetCell(layout),
    panelFieldName("rollLengthIn"),
    panelFieldName("endLapIn"),
  );
  return {
    underlayment: result(
      "Underlayment rolls",
      `=IF(${underlaymentFeetCell(layout)}=0,"",${underlayment})`,
      "#,##0",
      "one layer over the whole roof, with end laps; check the local code for more layers on a low slope",
    ),
    overhang: {
      ...input("Eave overhang, level (in)", typed.overhangIn, "blank: no ice barrier"),
      ...(typed.overhangIn === undefined && layout.roofRows > 0 && { content: formula(OVERHANG_OF_ROOF) }),
    },
    wall: input("Wall, to the wall line (in)", typed.wallIn, "0 if its outer face is the wall line"),
    iceWidth: input("Ice barrier roll width (in)", undefined, "blank: the panel sheet's roll"),
    iceLength: input("Ice barrier roll length (in)", undefined, "blank: the panel sheet's roll"),
    iceSheet: result(
      "Ice barrier, sheet (ft)",
      unlessEmpty(cell("overhang"), iceBarrierFeetCell(layout)),
      "#,##0.00",
      iceBarrierSpec.source,
    ),
    iceRolls: result("Ice barrier rolls", unlessEmpty(cell("overhang"), rolls), "#,##0", "with end laps"),
    attic: input("Attic floor to vent (sq ft)", typed.atticFloorSqFt, "blank: no vents"),
    balanced: {
      ...input("Vents high and low", undefined, "yes: meets all conditions of the code's exception"),
      choices: ["yes", "no"],
    },
    vents: result(
      "Net free vent area (sq in)",
      unlessEmpty(cell("attic"), call(ventAreaSpec, cell("attic"), isBalanced)),
      "#,##0",
      ventAreaSpec.source,
    ),
  };
};

/** Section 6: underlayment, ice barrier and attic vents. Each code requirement names its source. */
export const deckSection = (layout: TakeoffLayout, typed: DeckInput): PlannedCell[] => {
  const lines = linesOf(layout, typed);
  return [
    {
      row: layout.deck - 1,
      column: LABEL,
      content: text("6  Deck: underlayment, ice barrier and vents (the local code governs)"),
      style: "section",
    },
    ...DECK_LINES.flatMap((line, index): PlannedCell[] => {
      const row = layout.deck + index;
      const { label, note, ...cell } = lines[line];
      return [
        { row, column: LABEL, content: text(label), style: "label" },
        { row, column: DECK_VALUE, ...cell },
        { row, column: NOTE, content: text(note), style: "note" },
      ];
    }),
  ];
};
