/** A drawing in pixels, from its upper left corner: a few lines, faces and words, which every host can draw its own way. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

export type Mark =
  | {
      readonly kind: "line";
      readonly spots: readonly PicturePoint[];
      readonly weight: "edge" | "thin" | "dashed";
    }
  /** A measure's line, with an arrow at each end. */
  | { readonly kind: "dimension"; readonly from: PicturePoint; readonly to: PicturePoint }
  | {
      readonly kind: "face";
      readonly spots: readonly PicturePoint[];
      readonly fill: "metal" | "wall" | "pointer";
    }
  | {
      readonly kind: "words";
      readonly at: PicturePoint;
      readonly text: string;
      readonly align: "middle" | "start";
    };

export interface Figure {
  readonly width: number;
  readonly height: number;
  /** For those who can't see it. It says what is drawn, never what is asked. */
  readonly description: string;
  readonly marks: readonly Mark[];
}

export const FIGURE_WIDTH = 640;

export const line = (weight: "edge" | "thin" | "dashed", ...spots: PicturePoint[]): Mark => ({
  kind: "line",
  spots,
  weight,
});
export const face = (fill: "metal" | "wall" | "pointer", ...spots: PicturePoint[]): Mark => ({
  kind: "face",
  spots,
  fill,
});
export const words = (x: number, y: number, text: string): Mark => ({
  kind: "words",
  at: { x, y },
  text,
  align: "middle",
});

const GAP = 16;

/** A level measure under or over what it measures. */
export const across = (left: number, right: number, y: number, text: string): Mark[] => [
  { kind: "dimension", from: { x: left, y }, to: { x: right, y } },
  words((left + right) / 2, y + GAP, text),
];

/** A plumb measure beside what it measures. */
export const upright = (top: number, bottom: number, x: number, text: string): Mark[] => [
  { kind: "dimension", from: { x, y: top }, to: { x, y: bottom } },
  { kind: "words", at: { x: x + GAP, y: (top + bottom) / 2 }, text, align: "start" },
];

/** The corners of a box, in order around it. */
export const box = (left: number, top: number, width: number, height: number): PicturePoint[] => [
  { x: left, y: top },
  { x: left + width, y: top },
  { x: left + width, y: top + height },
  { x: left, y: top + height },
];
