import { InputError } from "../../../../shared/inputError";
import { a1, cellCount, type Area } from "../../../workbook/address";
import { grouped, rangeOf, slicesOf } from "./ranges";

/** An area of a sheet, both in the context in which they are read. */
export interface Block {
  readonly sheet: Excel.Worksheet;
  readonly name: string;
  readonly area: Area;
}

/** One cell far away makes the used range huge; reading more than this would take too long. */
const MOST_CELLS = 2_000_000;

export const refuseVast = ({ name, area }: Block): void => {
  if (cellCount(area) > MOST_CELLS)
    throw new InputError(
      `"${name}" is used as far as ${a1(area.to)}, which is too much to read. Delete the cells that are far away from the rest.`,
    );
};

/** Reads the rows of blocks in requests of limited size. `load` loads properties of a range, `take` reads them after the sync. */
export const readInPieces = async <Loaded, Line>(
  context: Excel.RequestContext,
  blocks: readonly Block[],
  load: (range: Excel.Range) => Loaded,
  take: (loaded: Loaded) => readonly Line[],
): Promise<Line[][]> => {
  blocks.forEach(refuseVast);
  const lines = blocks.map((): Line[] => []);
  const slices = blocks.flatMap(({ sheet, area }, index) =>
    slicesOf(area).map((slice) => ({ sheet, slice, into: lines[index] })),
  );
  for (const group of grouped(slices, ({ slice }) => cellCount(slice))) {
    const asked = group.map(({ sheet, slice, into }) => ({ into, loaded: load(rangeOf(sheet, slice)) }));
    await context.sync();
    for (const { into, loaded } of asked) into?.push(...take(loaded));
  }
  return lines;
};

/** The values of blocks, or what was entered in their cells. */
export const readLines = (
  context: Excel.RequestContext,
  blocks: readonly Block[],
  what: "values" | "formulas",
): Promise<unknown[][][]> =>
  readInPieces(
    context,
    blocks,
    (range) => {
      range.load(what);
      return range;
    },
    (range) => range[what] as unknown[][],
  );
