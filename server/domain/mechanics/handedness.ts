import type { ThrowingHand } from "@/server/domain/people/person";
import type { CameraView } from "./delivery";

/**
 * Where to stand for a view, in the words of a ball field. The open side is the one the chest turns to before the throw.
 * @example cameraPlace("left", "open_side") // "the first-base side"
 */
export function cameraPlace(throws: ThrowingHand, view: CameraView): string {
  if (view === "front") return "behind a screen at the plate";
  if (view === "back") return "behind the mound";
  const thirdBase = (view === "open_side") === (throws === "right");
  return thirdBase ? "the third-base side" : "the first-base side";
}

/** What lies toward the right edge of a clip: the plate or the rubber from a side, a side of the pitcher from an end. */
export type RightOfPicture = "plate" | "rubber" | "glove_side" | "throwing_side";

/**
 * What lies to the right on the upright picture; its opposite lies to the left. From the open side a right-hander throws
 * to the right of the picture, a left-hander to the left. A screen that mirrors the picture does not change it: points
 * are kept as they lie in the source.
 * @example rightOfPicture("right", "open_side") // "plate"
 */
export function rightOfPicture(throws: ThrowingHand, view: CameraView): RightOfPicture {
  const isRight = throws === "right";
  if (view === "open_side") return isRight ? "plate" : "rubber";
  if (view === "closed_side") return isRight ? "rubber" : "plate";
  return (view === "front") === isRight ? "glove_side" : "throwing_side";
}
