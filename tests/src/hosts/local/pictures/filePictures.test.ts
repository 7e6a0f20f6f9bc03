import "../../../../support/noScreen";
import { ImageSourceType, type Injector, type Workbook } from "@univerjs/core";
import { DrawingRenderService } from "@univerjs/drawing-ui";
import { ISheetDrawingService } from "@univerjs/sheets-drawing";
import { BehaviorSubject, Subject } from "rxjs";
import { bookSnapshot } from "../../../../../src/hosts/local/book/bookSnapshot";
import type { FileImage } from "../../../../../src/hosts/local/pictures/filePictures";
import { makeFilePicturesViewOnly } from "../../../../../src/hosts/local/pictures/viewOnlyPictures";
import { readPictures } from "../../../../../src/hosts/local/pictures/savedPictures";
import { describePictures } from "../../../../../src/hosts/local/pictures/pictureDescriptions";
import type { BookSheet, FilePicture } from "../../../../../src/xlsx/book/book";
import { sheetOf } from "../../../xlsx/bookOf";

const at = (row: number, column: number, x = 0, y = 0) => ({ row, column, offsetPx: { x, y } });

const picture = (from: FilePicture["from"], to: FilePicture["to"], description = ""): FilePicture => ({
  from,
  to,
  description,
  source: "data:image/png;base64,AA==",
});

const sheet = (filePictures: readonly FilePicture[], more: Partial<BookSheet> = {}): BookSheet => ({
  ...sheetOf("Bid", { A1: { value: "eave" } }),
  defaultRowPx: 20,
  defaultColumnPx: 100,
  filePictures,
  ...more,
});

const shown = (each: BookSheet) => {
  const { resources = [], sheets = {} } = bookSnapshot("test", {
    sheets: [each],
    names: [],
    styles: new Map(),
  });
  const data = resources.find(({ name }) => name === "SHEET_DRAWING_PLUGIN")?.data ?? "{}";
  const bySheet = JSON.parse(data) as Record<string, { data: Record<string, FileImage>; order: string[] }>;
  const { data: images = {}, order = [] } = bySheet["sheet-1"] ?? {};
  return { images: order.map((id) => images[id] as FileImage), size: sheets["sheet-1"] };
};

describe("a file's pictures in the engine", () => {
  it("are where the file puts them", () => {
    const { images } = shown(sheet([picture(at(1, 1), at(3, 2, 30, 5), "The north eave")]));
    expect(images).toMatchObject([
      {
        unitId: "test",
        subUnitId: "sheet-1",
        imageSourceType: ImageSourceType.BASE64,
        source: "data:image/png;base64,AA==",
        description: "The north eave",
        sheetTransform: {
          from: { row: 1, rowOffset: 0, column: 1, columnOffset: 0 },
          to: { row: 3, rowOffset: 5, column: 2, columnOffset: 30 },
        },
      },
    ]);
  });

  it("end where their size says, across rows and columns of any size, hidden ones too", () => {
    const { images } = shown(
      sheet([picture(at(0, 0, 10, 4), { widthPx: 150, heightPx: 100 })], {
        rows: new Map([
          [1, { sizePx: 50 }],
          [2, { isHidden: true }],
        ]),
        columns: new Map([[1, { sizePx: 40 }]]),
      }),
    );
    // Down: 20, 50, hidden, 20, and 14 of the next. Across: 100, 40, and 20 of the next.
    expect(images[0]?.sheetTransform.to).toEqual({ row: 4, rowOffset: 14, column: 2, columnOffset: 20 });
  });

  it("make the sheet large enough to hold them", () => {
    const { size } = shown(sheet([picture(at(500, 40), at(510, 44))]));
    expect(size).toMatchObject({ rowCount: 511, columnCount: 45 });
    const small = shown(sheet([picture(at(0, 0), at(1, 1))])).size;
    expect(small).toMatchObject({ rowCount: 61, columnCount: 26 });
  });
});

const injectorOf = (services: ReadonlyMap<unknown, unknown>): Injector =>
  ({ get: (key: unknown) => services.get(key) }) as unknown as Injector;

const drawn = (pictures: readonly FilePicture[]) => {
  const { images } = shown(sheet(pictures));
  return Object.fromEntries(images.map((image) => [image.drawingId, image]));
};

it("a save doesn't write a file's pictures again", async () => {
  const data = drawn([picture(at(0, 0), at(1, 1))]);
  const drawings = { getDrawingDataForUnit: () => ({ "sheet-1": { data, order: Object.keys(data) } }) };
  const workbook = {
    getUnitId: () => "test",
    getSheetBySheetId: () => ({ getName: () => "Bid" }),
  } as unknown as Workbook;
  const read = await readPictures(injectorOf(new Map([[ISheetDrawingService, drawings]])), workbook);
  expect(read).toEqual({ bySheet: new Map(), lost: 0 });
});

it("a click goes through a file's picture, and selects one that was inserted here", async () => {
  const service = { renderImages: async () => [{ evented: true }] };
  const detached: unknown[] = [];
  const scene = { detachTransformerFrom: (image: unknown) => detached.push(image) };
  makeFilePicturesViewOnly(injectorOf(new Map([[DrawingRenderService, service]])));
  const render = service.renderImages as unknown as DrawingRenderService["renderImages"];
  const [ofFile] = Object.values(drawn([picture(at(0, 0), at(1, 1))]));
  if (!ofFile) throw new Error("there is no picture");
  expect(await render(ofFile, scene as never)).toEqual([{ evented: false }]);
  expect(detached).toHaveLength(1);
  expect(await render({ ...ofFile, drawingId: "put-here" }, scene as never)).toEqual([{ evented: true }]);
  expect(detached).toHaveLength(1);
});

it("describes the file's pictures on the active sheet, also after they are removed and restored", () => {
  const [add$, update$, remove$] = [new Subject(), new Subject(), new Subject()];
  let data: Record<string, FileImage> = {};
  const drawings = { add$, update$, remove$, getDrawingData: () => data };
  const workbook = {
    getUnitId: () => "test",
    activeSheet$: new BehaviorSubject({ getSheetId: () => "sheet-1" }),
  } as unknown as Workbook;
  let words: string | undefined;
  const container = {
    setAttribute: (_: string, value: string) => (words = value),
    removeAttribute: () => (words = undefined),
  } as unknown as HTMLElement;
  describePictures(injectorOf(new Map([[ISheetDrawingService, drawings]])), workbook, container);
  expect(words).toBeUndefined();
  data = drawn([picture(at(1, 1), at(3, 2), "The north eave"), picture(at(5, 0), at(6, 1))]);
  add$.next([]);
  expect(words).toBe("Pictures on this sheet, at B2: The north eave; at A6: a picture without a description");
});
