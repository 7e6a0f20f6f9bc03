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
 * A comment is stored in up to three parts of its sheet: its text with the cell's address, its box in a VML drawing and, in newer
 * files, the thread.
 */
const partsBeside = (draft: PackageDraft, sheetPath: string, kind: string): string[] =>
  relationshipsOf(draft.result(), sheetPath)
    .filter((relationship) => relationship.kind === kind && draft.has(relationship.target))
    .map(({ target }) => target);

const clientDataOf = (shape: XmlElement): XmlElement | undefined => childOf(shape, "ClientData");

const areComments = ({ root }: XmlPart): boolean => {
  const boxes = descendantsOf(root, "shape").map(clientDataOf);
  return descendantsOf(root, "ClientData").every(
    (data) => data.attributes.get("ObjectType") === "Note" && boxes.includes(data),
  );
};

/** Whether a sheet's VML drawings have more than comment boxes. One that can't be parsed may have anything. */
export const hasFormControls = (draft: PackageDraft, sheetPath: string): boolean =>
  partsBeside(draft, sheetPath, "vmlDrawing").some((path) => {
    try {
      return !areComments(draft.read(path));
    } catch (failure) {
      if (failure instanceof FileError) return true;
      throw failure;
    }
  });

/** Updates an element's cell reference, or removes the element with its cell. */
const moveAddressed = (source: string, element: XmlElement, moves: readonly RowColumnMove[]): Splice[] => {
  const from = parseA1(element.attributes.get("ref") ?? "");
  if (!from) return [];
  const to = addressAfter(from, moves);
  return [to ? changeElement(source, element, { attributes: { ref: a1(to) } }) : removeElement(element)];
};

/** A VML anchor: column, offset, row and offset of the first corner, then of the second. */
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

/** A box moves with its cell and keeps its size. */
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

/** Moves the comments of a sheet with their cells where whole rows and columns were inserted or deleted. */
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
