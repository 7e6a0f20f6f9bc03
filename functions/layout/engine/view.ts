import type { Side } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import type { CoursePoint } from "./face";
import type { FacePoint, Ring } from "./layoutResult";

/** How to show a plane with its left edge at 0, though it may be laid from the right. */
export interface View {
  readonly side: Side;
  readonly widthIn: number;
  readonly panel: LaidPanel;
}

/** The left end of a span given from the start side. */
export const leftEndIn = ({ side, widthIn }: View, fromIn: number, toIn: number): number =>
  side === "left" ? fromIn : widthIn - toIn;

/** The same ring, starting at its lowest corner; the leftmost if there are several. */
const fromLowerLeft = (ring: Ring): Ring => {
  const isLower = (a: FacePoint, b: FacePoint): boolean =>
    a.yIn < b.yIn || (a.yIn === b.yIn && a.xIn < b.xIn);
  const first = ring.reduce(
    (best, corner, index) => (isLower(corner, ring[best] as FacePoint) ? index : best),
    0,
  );
  return [...ring.slice(first), ...ring.slice(0, first)];
};

/** A ring as shown. Mirroring reverses its direction, so the corners are reversed back. */
export const seenRing = (view: View, places: readonly CoursePoint[]): Ring => {
  const ring = places.map(({ alongIn, upIn }) => ({ xIn: leftEndIn(view, alongIn, alongIn), yIn: upIn }));
  return fromLowerLeft(view.side === "left" ? ring : ring.reverse());
};
