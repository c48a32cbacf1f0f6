import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { correctionScope, correctionsOf, stepCorrection } from "@/server/data/corrections";
import { reviewScope } from "@/server/data/reviews";
import { roundListOf } from "@/server/data/round-list";
import { roundScope } from "@/server/data/rounds";
import { Refusal } from "@/server/domain/errors/refusal";
import { moveCorrection } from "@/server/domain/reviews/correction-state";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import { DONE, done } from "../done";
import { command, query } from "../procedures";
import { addAddendum } from "../reviews/add-addendum";
import { compareShape, loadCompare } from "../reviews/load-compare";
import { loadReading } from "../reviews/load-reading";
import { loadRoom } from "../reviews/load-room";
import { draftInput, saveDraft, versionInput } from "../reviews/save-draft";
import { sendReview } from "../reviews/send-review";
import { settleRound } from "../reviews/settle-round";
import { idInput, readingShape, roomShape, roundListShape } from "../reviews/shapes";
import { router } from "../trpc";

const roundInput = z.strictObject({ roundId: idInput });
const draftAt = z.strictObject({ roundId: idInput, version: versionInput });
const sentAnswer = z.strictObject({ reviewId: z.string() });
const words = z.string().trim().min(1).max(DRAFT_LIMITS.noteLength);

export const reviewsRouter = router({
  /** The review room of a round: its clips, what is seen on them, and what is being written. For staff. */
  room: query({
    action: "review.room",
    input: roundInput,
    output: roomShape,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    run: (scope, { roundId }) => loadRoom(scope, roundId),
  }),

  /** A clip of a round beside an earlier one of the same view. For staff. */
  compare: query({
    action: "review.room",
    input: roundInput.extend({ clipId: idInput.nullable(), withClipId: idInput.nullable() }),
    output: compareShape,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    run: (scope, asked) => loadCompare(scope, asked),
  }),

  /** A round as the family reads it. */
  read: query({
    action: "review.read",
    input: roundInput,
    output: readingShape,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    run: (scope, { roundId }) => loadReading(scope, roundId),
  }),

  /** Every round of an athlete, the latest first. */
  list: query({
    action: "review.read",
    input: z.strictObject({ athleteId: idInput }),
    output: roundListShape,
    athlete: (db, { athleteId }) => athleteScope(db, athleteId),
    run: async ({ db, athlete }) => ({
      zone: athlete.zone,
      rounds: await roundListOf(db, athlete.athleteId),
    }),
  }),

  /** Keeps what is being written, whole, over the version it was read at. */
  saveDraft: command({
    action: "review.write",
    input: draftInput,
    output: z.strictObject({ version: z.number(), savedAtMs: z.number() }),
    athlete: (db, { roundId }) => roundScope(db, roundId),
    run: saveDraft,
  }),

  /** Sends the review to the family as its draft stands. */
  send: command({
    action: "review.write",
    input: draftAt,
    output: sentAnswer,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    run: async (scope, input) => ({ reviewId: await sendReview(scope, input) }),
  }),

  /** Settles the round by its check as the draft stands. */
  settle: command({
    action: "review.write",
    input: draftAt,
    output: sentAnswer,
    athlete: (db, { roundId }) => roundScope(db, roundId),
    run: async (scope, input) => ({ reviewId: await settleRound(scope, input) }),
  }),

  /** Adds a later word to a sent review, by the coach who has the round, and tells the family. */
  addAddendum: command({
    action: "review.write",
    input: z.strictObject({ reviewId: idInput, text: words }),
    output: done,
    athlete: (db, { reviewId }) => reviewScope(db, reviewId),
    async run(scope, input) {
      await addAddendum(scope, input);
      return DONE;
    },
  }),

  /** Retires an open correction that is no longer wanted, with the reason. */
  retire: command({
    action: "correction.retire",
    input: z.strictObject({ correctionId: idInput, reason: words }),
    output: done,
    athlete: (db, { correctionId }) => correctionScope(db, correctionId),
    async run({ db, actor, athlete, nowMs }, { correctionId, reason }) {
      const record = (await correctionsOf(db, athlete.athleteId)).find((each) => each.id === correctionId);
      if (!record) throw new Refusal({ reason: "not_found" });
      const move = moveCorrection(record.standing, { kind: "retired", atMs: nowMs, reason });
      if (!move.ok) throw new Refusal({ reason: "changed_meanwhile" });
      const { standing } = move;
      const step = { correctionId, reason, actorPersonId: actor.personId, atMs: nowMs, standing };
      await stepCorrection(db, { ...step, kind: "retired" });
      return DONE;
    },
  }),
});
