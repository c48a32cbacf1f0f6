import { DRAFT_LIMITS, type ReviewDraft } from "./draft";
import { asTheDeliveryRuns } from "./recap";

/** Where a spoken note stands: of a draft, with the family, or deleted. */
export const VOICE_STATES = ["waiting", "sent", "gone"] as const;
export type VoiceState = (typeof VOICE_STATES)[number];

/** Longest spoken note, in milliseconds: a minute. Common practice, no source. */
export const MAX_VOICE_MS = 60_000;

/** Largest spoken note, in bytes: a minute of Opus at 64 kbit/s is 480 kB. Common practice, no source. */
export const MAX_VOICE_BYTES = 2_000_000;

/** A recorder stops a little after it is told to; this much over the minute is still a minute. No source. */
const OVERRUN_MS = 2000;

/** Spoken notes that may wait on one round: each keep and correction spoken twice over. Common practice, no source. */
export const MAX_WAITING_VOICES = 2 * (DRAFT_LIMITS.keeps + DRAFT_LIMITS.corrections);

/**
 * What reading a recording may find wrong with it. `not_voice`: no container that can be read here, no sound in it, or
 * pictures beside the sound. `not_copied`: no copy could be made.
 */
export type VoiceProblem = "empty" | "not_voice" | "not_copied";

/** Why a recording is not kept. */
export type VoiceRefusal = VoiceProblem | "too_big" | "too_long";

/** Why a recording of a length cannot be kept, or null when it can. A little over the minute is allowed. */
export function judgeVoice(durationMs: number): VoiceRefusal | null {
  if (durationMs <= 0) return "empty";
  return durationMs > MAX_VOICE_MS + OVERRUN_MS ? "too_long" : null;
}

const REFUSED: Record<VoiceRefusal, string> = {
  empty: "Nothing was recorded. Check the microphone and speak again.",
  not_voice: "This is no recording of a voice that can be read here. Speak it again, or write it.",
  not_copied: "The recording could not be read to its end. Speak it again, or write it.",
  too_big: "The recording is larger than a minute of speech. Speak it again, in fewer words.",
  too_long: "The recording is longer than a minute. Speak it again, in fewer words.",
};

/** The sentence the coach reads when a recording is not kept. */
export function voiceRefusalInWords(refusal: VoiceRefusal): string {
  return REFUSED[refusal];
}

/** Every spoken note that a draft names, in the order of the recap, each once. */
export function voicesNamed(draft: Pick<ReviewDraft, "keeps" | "corrections">): string[] {
  const named = [...asTheDeliveryRuns(draft.corrections), ...asTheDeliveryRuns(draft.keeps)];
  return [...new Set(named.flatMap(({ voiceId }) => (voiceId === null ? [] : [voiceId])))];
}

/**
 * What the spoken notes of a review still need before it can be sent, as fragments of one sentence: each that is named
 * must be there to be sent, recorded by the coach who sends it and for this round. `waiting` are those that are.
 * @example voicesMissing({ keeps: [], corrections: [{ ...correction, voiceId: "voi_1" }] }, [])
 * // ["speak the note on correction 1 again or take it off: it is not there any more"]
 */
export function voicesMissing(
  draft: Pick<ReviewDraft, "keeps" | "corrections">,
  waiting: readonly string[],
): string[] {
  const complaints = (rows: readonly { voiceId: string | null }[], word: string) =>
    rows.flatMap(({ voiceId }, index) =>
      voiceId === null || waiting.includes(voiceId)
        ? []
        : [`speak the note on ${word} ${index + 1} again or take it off: it is not there any more`],
    );
  return [
    ...complaints(asTheDeliveryRuns(draft.corrections), "correction"),
    ...complaints(asTheDeliveryRuns(draft.keeps), "keep"),
  ];
}
