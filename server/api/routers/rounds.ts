import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { promiseHours } from "@/server/data/promise-hours";
import { keepRemark } from "@/server/data/remarks";
import { replyWindowFrom } from "@/server/data/reply-windows";
import { tellOfHandOver, tellOfRetake, tellOfTaking, tellOfWithdrawal } from "@/server/data/round-notices";
import { coachesNow } from "@/server/data/round-queue";
import { passDrafts, roundScope, stepRound } from "@/server/data/rounds";
import { FILMED_SPEEDS } from "@/server/domain/clips/capture-rate";
import { sendClipsInput } from "@/server/domain/clips/send-clip";
import { Refusal } from "@/server/domain/errors/refusal";
import { pausePromise } from "@/server/domain/reviews/promise";
import { DONE, done } from "../done";
import { command, query } from "../procedures";
import { queueOutput, readQueue } from "../read-queue";
import { roundFreeFor, roundInHand } from "../round-in-hand";
import { isRoundOf, sendClips } from "../send-clips";
import { router } from "../trpc";

const id = z.string().min(1).max(64);
const reason = z.string().trim().min(3, "a reason in a few words").max(500);
const aboutRound = z.strictObject({ roundId: id });

export const roundsRouter = router({
  /** What is owed in the order it falls due, and what waits for a family. */
  queue: query({
    action: "queue.view",
    input: z.strictObject({}),
    output: queueOutput,
    run: ({ db, actor, nowMs }) => readQueue(db, actor.personId, nowMs),
  }),

  /** Sends waiting clips: as a new round, as a reply, or in place of clips that could not be used. */
  send: command({
    action: "clip.send",
    input: z.strictObject({
      athleteId: id,
      roundId: id.nullable(),
      clips: sendClipsInput,
      filmedSpeed: z.enum(FILMED_SPEEDS).default("unknown"),
    }),
    output: z.strictObject({ roundId: z.string(), dueAtMs: z.number(), pitchesLogged: z.number() }),
    athlete: async (db, { athleteId, roundId }) =>
      (await isRoundOf(db, roundId, athleteId)) ? athleteScope(db, athleteId) : null,
    run: (scope, { athleteId, ...sending }) => sendClips(scope, sending),
  }),

  /** Takes a received round: the caller will review it. */
  take: command({
    action: "round.take",
    input: aboutRound,
    output: done,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    async run({ db, actor, athlete, nowMs }, { roundId }) {
      const row = await roundFreeFor(db, roundId, actor.personId);
      if (row.state === "taken") return DONE;
      const changes = { coachPersonId: actor.personId, takenAtMs: nowMs };
      await stepRound(db, row, { step: "taken", actorPersonId: actor.personId, nowMs, changes });
      await tellOfTaking(db, athlete.athleteId, actor.personId, nowMs);
      return DONE;
    },
  }),

  /** Puts a taken round back into the queue; what was written stays with it. */
  putBack: command({
    action: "round.take",
    input: aboutRound,
    output: done,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    async run({ db, actor, nowMs }, { roundId }) {
      const row = await roundFreeFor(db, roundId, actor.personId);
      const changes = { coachPersonId: null, takenAtMs: null };
      await stepRound(db, row, { step: "put_back", actorPersonId: actor.personId, nowMs, changes });
      return DONE;
    },
  }),

  /** Hands a round to a coach, with what was written on it so far. */
  handOver: command({
    action: "round.handOver",
    input: z.strictObject({ roundId: id, coachPersonId: id }),
    output: done,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    async run({ db, actor, athlete, nowMs }, { roundId, coachPersonId }) {
      const row = await roundInHand(db, roundId);
      const coaches = await coachesNow(db);
      if (!coaches.some((coach) => coach.personId === coachPersonId))
        throw new Refusal({ reason: "not_found" });
      if (row.coachPersonId === coachPersonId) return DONE;
      const changes = { coachPersonId, takenAtMs: row.takenAtMs ?? nowMs };
      const by = { actorPersonId: actor.personId, toPersonId: coachPersonId };
      await stepRound(db, row, { step: "handed_over", ...by, nowMs, changes });
      await passDrafts(db, roundId, coachPersonId);
      const told = { toPersonId: coachPersonId, byPersonId: actor.personId, dueAtMs: row.dueAtMs };
      await tellOfHandOver(db, row, { ...told, zone: athlete.zone }, nowMs);
      return DONE;
    },
  }),

  /** Asks for another clip: the reason is sent, and the promise's clock stands still. */
  askRetake: command({
    action: "round.askRetake",
    input: z.strictObject({ roundId: id, reason }),
    output: done,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    async run({ db, actor, athlete, nowMs }, input) {
      const row = await roundFreeFor(db, input.roundId, actor.personId);
      const hours = await promiseHours(db, row.siteId);
      const window = await replyWindowFrom(db, athlete.athleteId, nowMs);
      const remarkId = await keepRemark(db, input.reason);
      const paused = { dueAtMs: null, pausedOpenMs: pausePromise(hours, row.dueAtMs ?? nowMs, nowMs) };
      const asked = { replyFrom: window.replyFrom, lapsesOn: window.lapsesOn, retakeRemarkId: remarkId };
      const changes = { ...paused, ...asked, retakeFrom: row.state };
      await stepRound(db, row, {
        step: "retake_asked",
        actorPersonId: actor.personId,
        nowMs,
        changes,
        remarkId,
      });
      await tellOfRetake(db, athlete.athleteId, { reason: input.reason, window }, nowMs);
      return DONE;
    },
  }),

  /** Withdraws a round whose review is not out yet, with the reason. */
  withdraw: command({
    action: "round.withdraw",
    input: z.strictObject({ roundId: id, reason }),
    output: done,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    async run({ db, actor, nowMs }, input) {
      const row = await roundInHand(db, input.roundId);
      const remarkId = await keepRemark(db, input.reason);
      const changes = { dueAtMs: null, pausedOpenMs: null, replyFrom: null, lapsesOn: null };
      await stepRound(db, row, {
        step: "withdrawn",
        actorPersonId: actor.personId,
        nowMs,
        changes,
        remarkId,
      });
      await tellOfWithdrawal(db, row, { reason: input.reason, byPersonId: actor.personId }, nowMs);
      return DONE;
    },
  }),
});
