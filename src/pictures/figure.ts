import type { PicturePoint } from "./picturePoint";

/** One part of a figure. Every host draws these few kinds its own way; coordinates are pixels. */
export type Mark =
  | {
      readonly kind: "line";
      readonly points: readonly PicturePoint[];
      readonly weight: "edge" | "thin" | "dashed";
    }
  /** A dimension line, with an arrow at each end. */
  | { readonly kind: "dimension"; readonly from: PicturePoint; readonly to: PicturePoint }
  | {
      readonly kind: "face";
      readonly points: readonly PicturePoint[];
      readonly fill: "metal" | "wall" | "pointer";
    }
  | {
      readonly kind: "label";
      readonly at: PicturePoint;
      readonly text: string;
      readonly align: "middle" | "start";
    };

export interface Figure {
  readonly width: number;
  readonly height: number;
  /** For screen readers. It describes the drawing and never gives away an answer. */
  readonly description: string;
  readonly marks: readonly Mark[];
}

export const FIGURE_WIDTH = 640;

export const line = (weight: "edge" | "thin" | "dashed", ...points: PicturePoint[]): Mark => ({
  kind: "line",
  points,
  weight,
});
export const face = (fill: "metal" | "wall" | "pointer", ...points: PicturePoint[]): Mark => ({
  kind: "face",
  points,
  fill,
});
export const label = (x: number, y: number, text: string): Mark => ({
  kind: "label",
  at: { x, y },
  text,
  align: "middle",
});

const GAP = 16;

/** A horizontal dimension line with its text below. */
export const horizontalDimension = (left: number, right: number, y: number, text: string): Mark[] => [
  { kind: "dimension", from: { x: left, y }, to: { x: right, y } },
  label((left + right) / 2, y + GAP, text),
];

/** A vertical dimension line with its text to the right. */
export const verticalDimension = (top: number, bottom: number, x: number, text: string): Mark[] => [
  { kind: "dimension", from: { x, y: top }, to: { x, y: bottom } },
  { kind: "label", at: { x: x + GAP, y: (top + bottom) / 2 }, text, align: "start" },
];

/** The corners of a box, in order around it. */
export const box = (left: number, top: number, width: number, height: number): PicturePoint[] => [
  { x: left, y: top },
  { x: left + width, y: top },
  { x: left + width, y: top + height },
  { x: left, y: top + height },
];
