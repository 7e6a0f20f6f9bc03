import type { LayoutStart } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import type { CoursePoint, Plane } from "./face";
import { checkedFace, layCourses } from "./layCourses";
import type { Layout } from "./layoutResult";
import { listCourse } from "./listCourse";
import { reusable } from "./piece";
import { pairsIn, sourcesOf } from "./panelSources";
import { seenRing } from "./view";

const total = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

/**
 * Lays out a roof plane course by course, by these rules:
 *
 * - Courses go up from the lowest point of the outline. The top course is cut to the height that is left.
 * - Joints are measured from the outermost point of the outline on the start side. The first joint of a course is at its
 *   stagger step (a fraction of a panel) plus the shift, with one more at every panel width, also across openings. A
 *   start at the right is the mirror image of one at the left. A gable starter therefore covers its fraction less the
 *   setback, and its blank adds the fold.
 * - A piece is a connected part of the roof between two joints. It is whole if it is a full panel with nothing to bend;
 *   otherwise it is cut. At a vertical edge (gable) it stops short by the setback and is cut longer by the fold; at a
 *   slanted edge (hip, valley) it is cut longer by the slant allowance, measured along the course; at an opening it is
 *   cut plain.
 * - A piece keeps the lock at each joint that it reaches. Panels are never flipped or turned, so the rest of a panel
 *   whose first piece keeps one lock can only become a piece that keeps the other lock, or none (see `matchPieces`).
 */
export const layOut = (plane: Plane, panel: LaidPanel, start: LayoutStart, reuse: boolean): Layout => {
  const face = checkedFace(plane, start.side, panel);
  const laid = layCourses(face, panel, start);
  const pieces = laid.flatMap(({ cuts }) => cuts.map(({ piece }) => reusable(piece)));
  const pairs = reuse ? pairsIn(pieces, panel) : [];
  const sources = sourcesOf(pieces.length, pairs);
  const view = { side: start.side, widthIn: face.widthIn, panel };

  let listedCuts = 0;
  const courses = laid.map((course) => {
    const listed = listCourse(course, sources.slice(listedCuts, listedCuts + course.cuts.length), view);
    listedCuts += course.cuts.length;
    return listed;
  });
  const whole = total(courses.map((course) => course.whole));
  const [outline = [], ...openings] = face.rings.map((ring: readonly CoursePoint[]) => seenRing(view, ring));
  return {
    start,
    panelWidthIn: panel.exposedWidthIn,
    panelHeightIn: panel.exposedHeightIn,
    widthIn: face.widthIn,
    heightIn: face.heightIn,
    outline,
    openings,
    courses,
    whole,
    cut: pieces.length,
    fromOffcuts: pairs.length,
    panels: whole + pieces.length - pairs.length,
  };
};
