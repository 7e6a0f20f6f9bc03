import { openAreas, type OpenArea } from "./areas";
import type { SkeletonArc, Wavefront } from "./wavefront";
import { nextEvent, type RoofEvent } from "./nextEvent";
import { collapseEdge, runAlong, collapse } from "./collapse";
import { split } from "./split";

/** Far more than any roof needs. Work is limited by a count, never by the clock. */
const EVENTS_PER_SIDE = 20;

/** The arcs of the skeleton, and the wavefronts that never closed: with any of those, there is no roof. */
export interface StraightSkeleton {
  readonly joints: readonly SkeletonArc[];
  readonly unclosed: readonly Wavefront[];
}

interface Applied {
  readonly loops: readonly Wavefront[];
  readonly joints: readonly SkeletonArc[];
}

const applyEvent = (area: OpenArea, event: RoofEvent): Applied => {
  const { loop, index } = event.at;
  if (event.kind === "split") {
    const { loop: hitLoop, index: hitIndex } = event.hit;
    const { loops, joint } = split(loop, index, hitLoop, hitIndex, event.height);
    return {
      loops: [...area.filter((each) => each !== loop && each !== hitLoop), ...loops],
      joints: [joint],
    };
  }
  const change = (event.kind === "edge" ? collapseEdge : runAlong)(loop, index, event.height);
  return { loops: [...area.filter((each) => each !== loop), change.loop], joints: change.joints };
};

/**
 * The weighted straight skeleton. The wavefront is the level outline of the roof as it rises: each side moves inward at
 * its own speed (a gable stands still) until nothing is left to cover, and the corners trace the arcs, through edge
 * events and split events. It starts at `startHeight`, where all wavefronts are complete. After Aichholzer and
 * Aurenhammer 1996, with weights after Eppstein and Erickson 1999.
 */
export const straightSkeleton = (
  loops: readonly Wavefront[],
  startHeight: number,
  toleranceFt: number,
): StraightSkeleton => {
  const joints: SkeletonArc[] = [];
  const unclosed: Wavefront[] = [];
  const sides = loops.reduce((sum, loop) => sum + loop.length, 0);
  const open = openAreas(loops, startHeight).map((area) => ({ area, height: startHeight }));
  for (let events = 0; open.length > 0; events++) {
    const { area, height } = open.pop() as (typeof open)[number];
    const event = events < EVENTS_PER_SIDE * sides ? nextEvent(area, height, toleranceFt) : undefined;
    if (!event) {
      unclosed.push(...area);
      continue;
    }
    const applied = applyEvent(area, event);
    const changes = applied.loops.map((loop) => collapse(loop, event.height, toleranceFt));
    joints.push(...applied.joints, ...changes.flatMap((change) => change.joints));
    const left = changes.map((change) => change.loop).filter((loop) => loop.length > 0);
    const areas = area.length === 1 ? left.map((loop) => [loop]) : openAreas(left, event.height);
    open.push(...areas.map((each) => ({ area: each, height: event.height })));
  }
  return { joints, unclosed };
};
