import type { PicturePoint } from "../../../pictures/picturePoint";
import { childOf, flagAttribute, numberAttribute, type XmlElement } from "../../xml/xml";
import { onlyIf, orNotShown } from "./notShown";

export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export const cornersFrame = (
  place: XmlElement | undefined,
  corner: "off" | "chOff",
  size: "ext" | "chExt",
): Frame => {
  const [at, extent] = [childOf(place, corner), childOf(place, size)];
  return {
    left: orNotShown(numberAttribute(at, "x")),
    top: orNotShown(numberAttribute(at, "y")),
    width: orNotShown(numberAttribute(extent, "cx")),
    height: orNotShown(numberAttribute(extent, "cy")),
  };
};

/** Nothing that is turned is shown. */
export const refuseTurned = (place: XmlElement | undefined): void => {
  onlyIf((numberAttribute(place, "rot") ?? 0) === 0);
};

export const flips = (place: XmlElement | undefined): { readonly x: boolean; readonly y: boolean } => ({
  x: flagAttribute(place, "flipH") ?? false,
  y: flagAttribute(place, "flipV") ?? false,
});

/** No drawing has anything so far from its corner, in pixels or in the file's own unit. */
const FARTHEST = 1e9;

/** A change of measure that takes one frame to another, as a group does with what is in it. */
export interface Change {
  readonly from: Frame;
  readonly to: Frame;
}

export const changed = ({ left, top, width, height }: Frame, { from, to }: Change): Frame => {
  onlyIf(from.width > 0 && from.height > 0);
  const [across, down] = [to.width / from.width, to.height / from.height];
  const frame = {
    left: to.left + (left - from.left) * across,
    top: to.top + (top - from.top) * down,
    width: width * across,
    height: height * down,
  };
  onlyIf(Object.values(frame).every((length) => Math.abs(length) <= FARTHEST));
  return frame;
};

/** The spot that lies so far across and down a frame, both from 0 to 1. */
export const spotIn = ({ left, top, width, height }: Frame, across: number, down: number): PicturePoint => ({
  x: left + across * width,
  y: top + down * height,
});
