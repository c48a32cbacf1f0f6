import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { armOf } from "@/server/data/arms";
import { setCapturedRate } from "@/server/data/captured-rates";
import { clipScope, discardWaitingClip, findClip, waitingClips } from "@/server/data/clips";
import { consentIsLive } from "@/server/data/consents";
import { athleteCard } from "@/server/data/season";
import { MAX_CAPTURED_FPS, MIN_CAPTURED_FPS } from "@/server/domain/clips/capture-rate";
import { CONVERSION_STATES } from "@/server/domain/clips/clip";
import { MAX_CLIP_BYTES, MAX_CLIP_MS } from "@/server/domain/clips/probe";
import { MAX_CLIPS_AT_ONCE } from "@/server/domain/clips/send-clip";
import { Refusal } from "@/server/domain/errors/refusal";
import { THROWING_HANDS } from "@/server/domain/people/person";
import { answerFor, armAnswer } from "../arm-answer";
import { DONE, done } from "../done";
import { command, query } from "../procedures";
import { roundsToAnswer, roundToAnswer } from "../rounds-to-answer";
import { router } from "../trpc";

const id = z.string().min(1).max(64);

const waitingClip = z.strictObject({
  clipId: z.string(),
  /** The upload it came by; the sender's own page finds its clip by it. */
  uploadId: z.string(),
  durationMs: z.number(),
  byteCount: z.number(),
  hasPoster: z.boolean(),
  conversion: z.enum(CONVERSION_STATES).nullable(),
});

export const clipsRouter = router({
  /** What the page for sending needs to know: consent, what waits for a clip, by when a clip sent now is due. */
  sending: query({
    action: "clip.send",
    input: z.strictObject({ athleteId: id }),
    output: z.strictObject({
      athleteGivenName: z.string(),
      /** Says where the open side is. */
      throws: z.enum(THROWING_HANDS),
      consentIsLive: z.boolean(),
      /** What the book leaves the arm today, for whoever is about to film. */
      arm: armAnswer,
      today: z.string(),
      zone: z.string(),
      rounds: z.array(roundToAnswer),
      limits: z.strictObject({ clips: z.number(), durationMs: z.number(), byteCount: z.number() }),
    }),
    athlete: (db, { athleteId }) => athleteScope(db, athleteId),
    async run({ db, athlete, today, nowMs }) {
      const { givenName, throws } = await athleteCard(db, athlete.athleteId);
      return {
        ...{ athleteGivenName: givenName, throws, today, zone: athlete.zone },
        arm: answerFor({ ...(await armOf(db, athlete.athleteId, nowMs)), day: today }),
        consentIsLive: await consentIsLive(db, athlete.athleteId, "video"),
        rounds: await roundsToAnswer(db, athlete.athleteId, today),
        limits: { clips: MAX_CLIPS_AT_ONCE, durationMs: MAX_CLIP_MS, byteCount: MAX_CLIP_BYTES },
      };
    },
  }),

  /** The clips the caller has uploaded for an athlete and not sent yet. */
  waiting: query({
    action: "clip.send",
    input: z.strictObject({ athleteId: id }),
    output: z.array(waitingClip),
    athlete: (db, { athleteId }) => athleteScope(db, athleteId),
    async run({ db, actor }, { athleteId }) {
      const clips = await waitingClips(db, athleteId, actor.personId);
      return clips.map((clip) => ({
        clipId: clip.id,
        uploadId: clip.uploadId ?? "",
        durationMs: clip.durationMs ?? 0,
        byteCount: clip.byteCount ?? 0,
        hasPoster: clip.hasPoster,
        conversion: clip.conversion,
      }));
    },
  }),

  /** Says for a coach how many frames a second a clip was recorded at; null when nobody can know. */
  setCapturedRate: command({
    action: "review.write",
    input: z.strictObject({
      clipId: id,
      capturedFps: z.number().min(MIN_CAPTURED_FPS).max(MAX_CAPTURED_FPS).nullable(),
    }),
    output: done,
    athlete: (db, { clipId }) => clipScope(db, clipId),
    async run({ db }, { clipId, capturedFps }) {
      const clip = await findClip(db, clipId);
      if (clip?.state !== "ready") throw new Refusal({ reason: "not_found" });
      await setCapturedRate(db, clipId, capturedFps, "coach");
      return DONE;
    },
  }),

  /** Takes back a clip that was uploaded and not sent. */
  discard: command({
    action: "clip.send",
    input: z.strictObject({ clipId: id }),
    output: done,
    athlete: (db, { clipId }) => clipScope(db, clipId),
    async run({ db, actor }, { clipId }) {
      const clip = await findClip(db, clipId);
      const isOwn = clip?.state === "waiting" && clip.uploadedByPersonId === actor.personId;
      if (!isOwn) throw new Refusal({ reason: "not_found" });
      await discardWaitingClip(db, clipId);
      return DONE;
    },
  }),
});
