import { isAllPlaced, mayPlaceOn, nextAsked, nextFrame, type Placing } from "./placing";

/**
 * What the screen asks for next, in one sentence.
 * @param frame the one on the picture, counted from 0
 * @example placingSentence(placing, 142) // "Then: front ankle."
 */
export function placingSentence(placing: Placing, frame: number): string {
  const next = nextAsked(placing);
  if (next === null || isAllPlaced(placing)) return "Drag a point, or move it by the arrows.";
  const must = nextFrame(placing);
  if (must !== null && must !== frame) return `On frame ${must + 1}: ${next.name}.`;
  const ask = `${placing.placed.length === 0 ? "Place" : "Then"}: ${next.name}.`;
  if (must !== null) return ask;
  if (next.on === "standing") return `Step to a frame on which they stand straight. ${ask}`;
  return mayPlaceOn(placing, frame)
    ? `Step back to the moment to compare with. ${ask}`
    : `Step back first, before the frame that is measured. ${ask}`;
}

/** A point's place in words, to who cannot see it. @example "front knee, 612 across, 340 down" */
export function pointInWords(name: string, { x, y }: { x: number; y: number }): string {
  return `${name}, ${Math.round(x)} across, ${Math.round(y)} down`;
}
