/**
 * What a mark for showing draws through its points: a plumb line (a point), the plate line along the ground (two), a
 * level (two), a target ring (its middle and a point of its edge), two limbs of a joint (three), a pencil's stroke, or a
 * short note at a place.
 */
export const MARK_GUIDES = ["plumb", "plate_line", "level", "ring", "limbs", "pencil", "note"] as const;

/** One way of drawing a mark. */
export type MarkGuide = (typeof MARK_GUIDES)[number];

/** The guides as they are written on a screen. */
export const GUIDE_WORDS: Readonly<Record<MarkGuide, string>> = {
  plumb: "Plumb line",
  plate_line: "Plate line",
  level: "Level",
  ring: "Target ring",
  limbs: "Two limbs",
  pencil: "Pencil",
  note: "Note",
};

/** How many points a guide is fitted to; a stroke of the pencil has at least two. */
export const GUIDE_POINTS: Readonly<Record<MarkGuide, number>> = {
  ...{ plumb: 1, plate_line: 2, level: 2, ring: 2, limbs: 3, pencil: 2, note: 1 },
};
