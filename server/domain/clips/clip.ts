/** A clip of a round is the first sent, or one of the reply. */
export const CLIP_PARTS = ["first", "reply"] as const;
export type ClipPart = (typeof CLIP_PARTS)[number];

/**
 * `waiting` is uploaded and probed but not yet sent with a round; `ready` can be watched; `drawing` is a demo clip on
 * its way; `replaced` gave way to a retake; `expired` was deleted when its retention time ended.
 */
export const CLIP_STATES = ["waiting", "ready", "drawing", "replaced", "expired"] as const;

/** What was thrown, in the trade's words; a family may leave it out. */
export const PITCH_TYPES = ["fastball", "change_up", "curveball", "slider", "other"] as const;
export type PitchType = (typeof PITCH_TYPES)[number];

/** Pitch type -> the word on screen. */
export const PITCH_TYPE_WORDS: Record<PitchType, string> = {
  fastball: "Fastball",
  change_up: "Change-up",
  curveball: "Curveball",
  slider: "Slider",
  other: "Other",
};
