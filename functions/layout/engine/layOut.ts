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
 * Lays a roof plane course by course. How it is laid:
 *
 * - Courses go up from the outline's lowest point; the top one is as high as what shows, so all its panels are cut.
 * - Joints: measured from the start side's outermost point of the whole outline, a course's first joint stands at its
 *   step of the stagger (a share of a panel) plus the start's shift, and one more every panel width, right across
 *   openings. A start at the right is the mirror image of one at the left. A gable starter so covers its share less
 *   the setback, and its blank is that and the fold.
 * - A piece is what of the roof hangs together between two joints. It is whole where it is a full panel with nothing
 *   to bend; every other is cut. At a vertical outline edge (gable) it stops short by the setback and is cut longer by
 *   the fold; at a slanted one (hip, valley) it is cut longer by the slant allowance, measured along the course; at an
 *   opening it is cut plain.
 * - A piece keeps the lock of each joint that it reaches. A panel is laid neither flipped nor turned, so the rest of a
 *   piece that keeps one lock can only become a piece that keeps the other, or none (see `matchPieces`).
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
