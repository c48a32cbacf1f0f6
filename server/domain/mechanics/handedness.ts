import type { ThrowingHand } from "@/server/domain/people/person";
import type { CameraView } from "./delivery";

/** The sides of the body as the checkpoints name them, so that no text has to be mirrored. */
export type BodySide = "front" | "back" | "glove" | "throwing";

/**
 * Which side of the body a word means for this pitcher. The front leg and the glove are opposite the throwing hand.
 * @example sideWord("right", "front") // "left": a right-hander strides with the left leg
 */
export function sideWord(throws: ThrowingHand, side: BodySide): "left" | "right" {
  const opposite = throws === "right" ? "left" : "right";
  return side === "front" || side === "glove" ? opposite : throws;
}

/**
 * Where to stand for a view, in the words of a ball field.
 * @example cameraPlace("left", "open_side") // "from the first-base side"
 */
export function cameraPlace(throws: ThrowingHand, view: CameraView): string {
  if (view === "front") return "from behind a screen at the plate";
  if (view === "back") return "from behind the mound";
  const thirdBase = (view === "open_side") === (throws === "right");
  return thirdBase ? "from the third-base side" : "from the first-base side";
}

/**
 * Which way the ball leaves on the picture. From third base the plate lies to the right, so a right-hander filmed from
 * the open side throws to the right of the screen and a left-hander to the left.
 */
export function throwsTowards(throws: ThrowingHand, view: CameraView): "camera" | "away" | "left" | "right" {
  if (view === "front") return "camera";
  if (view === "back") return "away";
  return (view === "open_side") === (throws === "right") ? "right" : "left";
}
