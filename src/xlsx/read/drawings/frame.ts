import type { PicturePoint } from "../../../pictures/picturePoint";
import { childOf, flagAttribute, numberAttribute, type XmlElement } from "../../xml/xml";
import { requireSupported, orUnsupported } from "./unsupported";

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
    left: orUnsupported(numberAttribute(at, "x")),
    top: orUnsupported(numberAttribute(at, "y")),
    width: orUnsupported(numberAttribute(extent, "cx")),
    height: orUnsupported(numberAttribute(extent, "cy")),
  };
};

/** Rotated objects aren't supported. */
export const refuseRotated = (place: XmlElement | undefined): void => {
  requireSupported((numberAttribute(place, "rot") ?? 0) === 0);
};

export const flips = (place: XmlElement | undefined): { readonly x: boolean; readonly y: boolean } => ({
  x: flagAttribute(place, "flipH") ?? false,
  y: flagAttribute(place, "flipV") ?? false,
});

/** The largest coordinate that is supported, in pixels or in EMU. */
const FARTHEST = 1e9;

/** Maps one frame to another, as a group does with its children. */
export interface FrameTransform {
  readonly from: Frame;
  readonly to: Frame;
}

export const transformed = ({ left, top, width, height }: Frame, { from, to }: FrameTransform): Frame => {
  requireSupported(from.width > 0 && from.height > 0);
  const [across, down] = [to.width / from.width, to.height / from.height];
  const frame = {
    left: to.left + (left - from.left) * across,
    top: to.top + (top - from.top) * down,
    width: width * across,
    height: height * down,
  };
  requireSupported(Object.values(frame).every((length) => Math.abs(length) <= FARTHEST));
  return frame;
};

/** The point at a fraction of a frame's width and height, both from 0 to 1. */
export const pointIn = ({ left, top, width, height }: Frame, across: number, down: number): PicturePoint => ({
  x: left + across * width,
  y: top + down * height,
});
