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
