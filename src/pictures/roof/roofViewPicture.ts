import type { Roof } from "../../../functions/roof/roofParts";
import type { RoofPoint } from "../../../functions/roof/skeleton/plan";
import type { PictureOptions } from "../pictureOptions";
import { edgeClass } from "./roofStyle";
import { numberBadge } from "./planeLabel";
import { planScale } from "./planScale";
import { roofSvg } from "./roofSvg";
import { roofInWords } from "./roofInWords";
import { element } from "../svg";
import { pointList, type Pixel } from "./pixel";
import { viewFaces } from "./viewFaces";
import { visibleLabels } from "./viewLabels";
import { facesTheEye, sightOf, type Sight } from "./viewPoint";
import { cutDistances, slice } from "./viewSlices";

const LAYERS = ["wall", "plane", "line"] as const;
type Layer = (typeof LAYERS)[number];

/** A face or an edge as the eye sees it. */
interface Drawn {
  readonly sights: readonly Sight[];
  readonly className: string;
  /** Within one slice walls come first: the eye looks down, so a plane over a wall hides it. Lines come last. */
  readonly layer: Layer;
}

const meanAway = (sights: readonly Sight[]): number =>
  sights.reduce((sum, { away }) => sum + away, 0) / sights.length;

/** Faces turned to the eye, and the edges of the planes among them. */
const drawnParts = (roof: Roof, turnDegrees: number): Drawn[] => {
  const see = (corners: readonly RoofPoint[]): Sight[] =>
    corners.map((corner) => sightOf(corner, turnDegrees));
  const faces = viewFaces(roof)
    .map(({ corners, className, isWall }): Drawn => ({
      sights: see(corners),
      className,
      layer: isWall ? "wall" : "plane",
    }))
    .filter(({ sights }) => facesTheEye(sights));
  const seen = new Set(roof.planes.filter(({ corners }) => facesTheEye(see(corners))));
  const lines = roof.edges
    .filter(({ plane, otherPlane }) => seen.has(plane) || (otherPlane && seen.has(otherPlane)))
    .map(({ kind, from, to }): Drawn => ({
      sights: see([from, to]),
      className: `roof-view-edge ${edgeClass(kind)}`,
      layer: "line",
    }));
  return [...faces, ...lines];
};

const markup = ({ sights, className, layer }: Drawn, toPixel: (sight: Sight) => Pixel): string =>
  element(layer === "line" ? "polyline" : "polygon", {
    class: className,
    points: pointList(sights.map(toPixel)),
  });

/**
 * The roof on its walls, seen from above one side and turned. Everything is cut at the distances where anything
 * begins or ends, and painted from the farthest slice to the nearest, so that what is nearer hides what is behind.
 */
export const roofViewPicture = (roof: Roof, turnDegrees: number, options: PictureOptions): string => {
  const parts = drawnParts(roof, turnDegrees);
  const sights = parts.flatMap((part) => part.sights);
  const scale = planScale(sights.map(({ across, up }) => ({ x: across, y: up })));
  const toPixel = ({ across, up }: Sight): Pixel => scale.toPixel({ x: across, y: up });
  const cuts = cutDistances(sights);
  const painted = cuts.slice(1).flatMap((near, index) =>
    parts
      .map((part) => ({ ...part, sights: slice(part.sights, near, cuts[index] as number) }))
      .filter((part) => part.sights.length > (part.layer === "line" ? 1 : 2))
      .sort(
        (a, b) =>
          LAYERS.indexOf(a.layer) - LAYERS.indexOf(b.layer) || meanAway(b.sights) - meanAway(a.sights),
      )
      .map((part) => markup(part, toPixel)),
  );
  const labels = visibleLabels(roof, turnDegrees).map(({ plane, place }) =>
    numberBadge(plane.number, toPixel(sightOf(place, turnDegrees))),
  );
  return roofSvg(options, {
    width: scale.width,
    height: scale.height,
    description: `Seen from above, turned ${Math.round(turnDegrees)} degrees. ${roofInWords(roof)}`,
    content: [...painted, ...labels],
  });
};
