import type { BookPicture } from "../book/book";
import { addAnchored } from "./drawing";
import type { PackageDraft } from "../package/packageDraft";
import { RELATIONSHIP_TYPES } from "../package/relationships";
import { attributesText } from "../xml/xmlText";

/** The extension that gives newer spreadsheets the SVG version of a picture. */
const SVG_EXTENSION = "{96DAC541-7B7A-43D3-8B79-37D633B846F1}";
const SVG_NAMESPACE = "http://schemas.microsoft.com/office/drawing/2016/SVG/main";

const addImage = (
  draft: PackageDraft,
  drawingPath: string,
  kind: "png" | "svg",
  bytes: Uint8Array,
): string => {
  const path = draft.freePath("xl/media/image", `.${kind}`);
  draft.add(path, kind === "png" ? "image/png" : "image/svg+xml", bytes);
  return draft.addRelationship(drawingPath, "image", path);
};

/** Adds a picture to a sheet: as PNG for every reader, and as SVG, if there is one, for newer readers. */
export const addPicture = (draft: PackageDraft, sheetPath: string, picture: BookPicture): void => {
  addAnchored(draft, sheetPath, picture, (drawingPath, id, size) => {
    const png = addImage(draft, drawingPath, "png", picture.png);
    const svg = picture.svg && addImage(draft, drawingPath, "svg", picture.svg);
    const lines =
      svg === undefined
        ? ""
        : `<a:extLst><a:ext uri="${SVG_EXTENSION}"><asvg:svgBlip xmlns:asvg="${SVG_NAMESPACE}" r:embed="${svg}"/></a:ext></a:extLst>`;
    const blip = `<a:blip xmlns:r="${RELATIONSHIP_TYPES}" r:embed="${png}">${lines}</a:blip>`;
    const named = `<xdr:nvPicPr><xdr:cNvPr${attributesText({ id, name: `Picture ${id}` })}/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr>`;
    const shape = `<xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext ${size}/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr>`;
    return `<xdr:pic>${named}<xdr:blipFill>${blip}<a:stretch><a:fillRect/></a:stretch></xdr:blipFill>${shape}</xdr:pic>`;
  });
};
