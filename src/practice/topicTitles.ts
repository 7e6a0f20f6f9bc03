/** Every topic by its id, in the order in which a class comes to it. They stand here by themselves, so that a list of them is light. */
export const TOPIC_TITLES = {
  tape: "Reading a tape",
  pitch: "Pitch",
  rafter: "Rafter factor",
  courses: "Courses",
  starters: "Stagger and starters",
  gables: "Gables",
  hips: "Hips and valleys",
  trim: "Trim cuts",
  fasteners: "Clips and nails",
  underlayment: "Underlayment",
  order: "Ordering",
  "change order": "Change order",
} as const;

export type TopicId = keyof typeof TOPIC_TITLES;
export const TOPIC_IDS = Object.keys(TOPIC_TITLES) as TopicId[];
