import { InputError } from "../../../shared/inputError";
import type { LayoutStart } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { checkOpenings } from "./checkOpenings";
import { layCourse, type LaidCourse } from "./course";
import { faceOf, type Face, type Plane } from "./face";
import { checkStep, firstJointIn } from "./joints";
import { courseStrips } from "./courseStrips";

/** More than any roof plane needs; a wrong unit is rejected before it costs minutes. */
const MOST_COURSES = 2000;
const MOST_PLACES = 200_000;

/** The plane in laying coordinates from one side, checked. */
export const checkedFace = (plane: Plane, side: LayoutStart["side"], panel: LaidPanel): Face => {
  const face = faceOf(plane, side);
  const courses = face.heightIn / panel.exposedHeightIn;
  if (!(courses <= MOST_COURSES))
    throw new InputError(
      `the outline must take at most ${MOST_COURSES} courses, got ${Math.ceil(courses)} of ${panel.exposedHeightIn} in`,
    );
  const places = courses * (face.widthIn / panel.exposedWidthIn);
  if (!(places <= MOST_PLACES))
    throw new InputError(`the outline must take at most ${MOST_PLACES} panels, got ${Math.ceil(places)}`);
  checkOpenings(face);
  return face;
};

/** Lays every course of a face. */
export const layCourses = (face: Face, panel: LaidPanel, start: LayoutStart): LaidCourse[] => {
  checkStep(start, panel);
  return courseStrips(face, panel).map((strip) =>
    layCourse(strip, firstJointIn(strip.course, start, panel), panel),
  );
};
