import type { Side } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { courseWarnings, pieceWarnings } from "./warnings";
import { layCourse, type LaidCourse } from "./course";
import { reusable, type Reusable } from "./piece";
import type { CourseStrip } from "./courseStrips";

/** The numbers of one course for one position of its joints. They do not depend on other courses. */
export interface CourseTally {
  readonly whole: number;
  readonly warnings: number;
  readonly pieces: readonly Reusable[];
}

const tallyOf = ({ strip, wholeRuns, cuts }: LaidCourse, panel: LaidPanel, side: Side): CourseTally => ({
  whole: wholeRuns.reduce((sum, { count }) => sum + count, 0),
  warnings: cuts.reduce(
    (sum, { piece }) => sum + pieceWarnings(piece, panel, side).length,
    courseWarnings(strip, panel).length,
  ),
  pieces: cuts.map(({ piece }) => reusable(piece)),
});

/** Many starts give a course the same first joint, so each course is laid out only once per first joint. */
export const tallyCache = (
  panel: LaidPanel,
  side: Side,
): ((strip: CourseStrip, jointIn: number) => CourseTally) => {
  const known = new Map<string, CourseTally>();
  return (strip, jointIn) => {
    const key = `${strip.course} ${jointIn}`;
    const tally = known.get(key) ?? tallyOf(layCourse(strip, jointIn, panel), panel, side);
    known.set(key, tally);
    return tally;
  };
};
