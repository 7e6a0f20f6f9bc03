declare module "edmonds-blossom" {
  /** Edges as [vertex, vertex, weight]; answers each vertex's partner, or -1. */
  export default function matching(edges: [number, number, number][], maximumCardinality: boolean): number[];
}
