/** Where a spoken note stands: of a draft, with the family, or deleted. */
export const VOICE_STATES = ["waiting", "sent", "gone"] as const;
export type VoiceState = (typeof VOICE_STATES)[number];

/** Longest spoken note, in milliseconds: a minute. Common practice, no source. */
export const MAX_VOICE_MS = 60_000;

/** Largest spoken note, in bytes: a minute of Opus at 64 kbit/s is 480 kB. Common practice, no source. */
export const MAX_VOICE_BYTES = 2_000_000;
