import { z } from "zod";
import type { RefusalDetail } from "@/server/domain/errors/refusal";
import { CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { addDays, type CalendarDay, isCalendarDay } from "@/server/domain/time/calendar-day";
import { PITCH_TYPES } from "./clip";

/** More pitches on one clip than this are taken for a slip of the thumb. Common practice, no source. */
export const MAX_PITCHES_ON_A_CLIP = 400;

/** Clips in one part of a round: a few views of a few pitches. Common practice, no source. */
export const MAX_CLIPS_AT_ONCE = 6;

/** Clips of one athlete that may wait to be sent: two full parts of a round. Common practice, no source. */
export const MAX_WAITING_CLIPS = 12;

/**
 * What the family says of one clip. `pitchesThrown` is what its filming cost the arm: 0 for dry work, and for a second
 * camera on pitches that another clip has counted.
 */
export const sendClipInput = z.strictObject({
  clipId: z.string().min(1).max(64),
  view: z.enum(CAMERA_VIEWS),
  pitchType: z.enum(PITCH_TYPES).nullable(),
  pitchesThrown: z.int().min(0).max(MAX_PITCHES_ON_A_CLIP),
  /** True when those pitches are part of an outing that is on the log, so that nothing counts twice. */
  alreadyOnLog: z.boolean(),
  note: z.string().trim().max(1000),
  filmedOn: z.string().refine(isCalendarDay, "a day that exists, written YYYY-MM-DD"),
});
export type SendClipInput = z.infer<typeof sendClipInput>;

/** The clips of one part of a round, each once. */
export const sendClipsInput = z
  .array(sendClipInput)
  .min(1)
  .max(MAX_CLIPS_AT_ONCE)
  .refine(
    (clips) => new Set(clips.map(({ clipId }) => clipId)).size === clips.length,
    "Name each clip once.",
  );

/** Why clips cannot be sent together. */
export type SendingRefusal = Extract<
  RefusalDetail,
  { reason: "consent_missing" | "clips_of_two_days" | "throw_entry_invalid" }
>;

/**
 * Why these clips cannot be sent as one part of a round, or null when they can. A live consent to video comes first;
 * all clips are of one day, and of none to come.
 * @param facts.today the day at the athlete's home site
 */
export function sendingRefusal(
  clips: readonly Pick<SendClipInput, "filmedOn">[],
  facts: { consentIsLive: boolean; athleteGivenName: string; today: CalendarDay },
): SendingRefusal | null {
  if (!facts.consentIsLive) return { reason: "consent_missing", athleteGivenName: facts.athleteGivenName };
  if (new Set(clips.map((clip) => clip.filmedOn)).size > 1) return { reason: "clips_of_two_days" };
  if (clips.some((clip) => clip.filmedOn > facts.today)) {
    return { reason: "throw_entry_invalid", why: "The clip is dated in the future." };
  }
  return null;
}

/**
 * How many pitches the clips add to the log, to be written as one entry of their day: those not yet in an outing.
 * @example pitchesToLog([{ pitchesThrown: 12, alreadyOnLog: false }, { pitchesThrown: 30, alreadyOnLog: true }]) // 12
 */
export function pitchesToLog(
  clips: readonly Pick<SendClipInput, "pitchesThrown" | "alreadyOnLog">[],
): number {
  return clips.filter((clip) => !clip.alreadyOnLog).reduce((sum, clip) => sum + clip.pitchesThrown, 0);
}

/** The last day on which a clip's film is kept: the academy's number of days after the day it came in. */
export function retainUntil(receivedOn: CalendarDay, retentionDays: number): CalendarDay {
  return addDays(receivedOn, retentionDays);
}

/** Whether a clip's film is past its last day. */
export function isPastRetention(lastKeptOn: CalendarDay, today: CalendarDay): boolean {
  return today > lastKeptOn;
}
