import { a1, type CellAddress } from "../../workbook/address";
import { parseA1 } from "../book/a1References";
import { FileError } from "../book/fileError";
import { addressAfter, type RowColumnMove } from "../book/rowColumnMoves";
import type { PackageDraft } from "../package/packageDraft";
import { relationshipsOf } from "../package/relationships";
import { changeElement, removeElement } from "../xml/elementOrder";
import type { Splice } from "../xml/splices";
import { childOf, descendantsOf, type XmlElement, type XmlPart } from "../xml/xml";

/**
 * A comment stands in up to three parts beside its sheet: its words with the cell's address, its box, which is an old drawing, and,
 * in newer files, the conversation.
 */
const partsBeside = (draft: PackageDraft, sheetPath: string, kind: string): string[] =>
  relationshipsOf(draft.result(), sheetPath)
    .filter((arrow) => arrow.kind === kind && draft.has(arrow.target))
    .map(({ target }) => target);

const clientDataOf = (shape: XmlElement): XmlElement | undefined => childOf(shape, "ClientData");

const areComments = ({ root }: XmlPart): boolean => {
  const boxes = descendantsOf(root, "shape").map(clientDataOf);
  return descendantsOf(root, "ClientData").every(
    (data) => data.attributes.get("ObjectType") === "Note" && boxes.includes(data),
  );
};

/** Whether a sheet's old drawings hold more than the boxes of comments; one that can't be read may hold anything. */
export const hasFormControls = (draft: PackageDraft, sheetPath: string): boolean =>
  partsBeside(draft, sheetPath, "vmlDrawing").some((path) => {
    try {
      return !areComments(draft.read(path));
    } catch (failure) {
      if (failure instanceof FileError) return true;
      throw failure;
    }
  });

/** The change that gives what goes by a cell's address its new one, or takes it away with its cell. */
const moveAddressed = (source: string, element: XmlElement, moves: readonly RowColumnMove[]): Splice[] => {
  const from = parseA1(element.attributes.get("ref") ?? "");
  if (!from) return [];
  const to = addressAfter(from, moves);
  return [to ? changeElement(source, element, { attributes: { ref: a1(to) } }) : removeElement(element)];
};

/** A box's corners as they are written: column, pixels into it, row, pixels into it; then the same of the other corner. */
const anchorBy = (anchor: string, { row, column }: CellAddress): string =>
  anchor
    .split(",")
    .map((part, at) =>
      at % 4 === 0
        ? Math.max(0, Number(part) + column)
        : at % 4 === 2
          ? Math.max(0, Number(part) + row)
          : Number(part),
    )
    .join(", ");

const textChange = ({ innerStart, innerEnd }: XmlElement, text: string): Splice => ({
  start: innerStart,
  end: innerEnd,
  text,
});

/** A box goes as far as its cell does, and keeps its size. */
const moveBox = (shape: XmlElement, moves: readonly RowColumnMove[]): Splice[] => {
  const data = clientDataOf(shape);
  const [row, column, anchor] = ["Row", "Column", "Anchor"].map((name) => childOf(data, name));
  if (!row || !column) return [];
  const from = { row: Number(row.text), column: Number(column.text) };
  const to = addressAfter(from, moves);
  if (!to) return [removeElement(shape)];
  const by = { row: to.row - from.row, column: to.column - from.column };
  return [
    ...(anchor ? [textChange(anchor, anchorBy(anchor.text, by))] : []),
    textChange(row, String(to.row)),
    textChange(column, String(to.column)),
  ];
};

/** Lets the comments of a sheet follow their cells where whole rows and columns were put in or taken out. */
export const moveComments = (
  draft: PackageDraft,
  sheetPath: string,
  moves: readonly RowColumnMove[],
): void => {
  for (const [kind, name] of [
    ["comments", "comment"],
    ["threadedComment", "threadedComment"],
  ] as const)
    for (const path of partsBeside(draft, sheetPath, kind))
      draft.edit(path, ({ source, root }) =>
        descendantsOf(root, name).flatMap((element) => moveAddressed(source, element, moves)),
      );
  for (const path of partsBeside(draft, sheetPath, "vmlDrawing"))
    draft.edit(path, ({ root }) => descendantsOf(root, "shape").flatMap((shape) => moveBox(shape, moves)));
};
