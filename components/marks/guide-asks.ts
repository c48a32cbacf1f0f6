import type { MarkGuide } from "@/server/domain/mechanics/mark-guide";
import type { MeasurePoint } from "@/server/domain/mechanics/measure-kind";

const here = (...names: string[]): MeasurePoint[] => names.map((name) => ({ name, on: "here" }));

/** The points that each guide is fitted to, as they are asked for; a pencil's stroke is drawn and asks for none. */
export const GUIDE_ASKS: Readonly<Record<MarkGuide, readonly MeasurePoint[]>> = {
  plumb: here("what the plumb line runs through, as the head"),
  plate_line: here("back foot on the rubber", "the plate, or the line to it"),
  level: here("one shoulder", "the other shoulder"),
  ring: here("middle of the target", "its edge"),
  limbs: here("upper end", "joint between the two", "lower end"),
  pencil: [],
  note: here("what the note is about"),
};
