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

/**
 * Who says how fast a clip was recorded: the file itself, whoever sent it, or the coach. Phones save slow motion as a
 * stretched file, so the file's own rate alone does not tell.
 */
export const CAPTURE_SOURCES = ["file", "sender", "coach"] as const;
export type CaptureSource = (typeof CAPTURE_SOURCES)[number];

/**
 * The copy of a film that browsers cannot decode: in line, being made, there, or not to be made (no program for it on
 * this machine, or it failed). Null for films that need none.
 */
export const CONVERSION_STATES = ["waiting", "running", "made", "no_program", "failed"] as const;
export type ConversionState = (typeof CONVERSION_STATES)[number];
