import { listCheckpoints } from "@/server/data/checkpoints";
import { type CorrectionRecord, correctionsOf, stepCorrection } from "@/server/data/corrections";
import { dropDraft, findDraft } from "@/server/data/drafts";
import { nameOfAthlete } from "@/server/data/names";
import { tellFamily } from "@/server/data/notices";
import { insertReview } from "@/server/data/reviews";
import { playableClips } from "@/server/data/round-clips";
import { type Round, stepRound } from "@/server/data/rounds";
import { athleteCard } from "@/server/data/season";
import { Refusal } from "@/server/domain/errors/refusal";
import { misfits } from "@/server/domain/reviews/checkpoint-fit";
import { isOpen } from "@/server/domain/reviews/correction-state";
import { type CheckDraft, EMPTY_CHECK_DRAFT } from "@/server/domain/reviews/draft";
import { measuresMissing, measuresToSend } from "@/server/domain/reviews/measures-to-send";
import { missingToSettle } from "@/server/domain/reviews/readiness";
import { moveRound } from "@/server/domain/reviews/round-state";
import { type CheckOutcome, outcomesInWords, outcomesOf } from "@/server/domain/reviews/settling";
import { writingRefusal } from "@/server/domain/reviews/writing";
import { env } from "@/server/env";
import type { Scope } from "../context";
import { roundInHand } from "../round-in-hand";
import { coachNameOf } from "./round-parts";

/**
 * Settles a round by its check as the draft stands: a verdict for each open correction, what holds and what carries
 * over, the family told. A round with nothing open is settled without a draft (version 0).
 * @throws Refusal when the caller may not, the draft is another by now, or a correction has no verdict
 */
export async function settleRound(
  scope: Scope,
  input: { roundId: string; version: number },
): Promise<string> {
  const { db, actor, athlete, nowMs } = scope;
  const round = await roundToSettle(scope, input.roundId);
  const kept = await findDraft(db, round.id, "check");
  if ((kept?.version ?? 0) !== input.version) throw new Refusal({ reason: "changed_meanwhile" });
  const draft = kept?.document ?? EMPTY_CHECK_DRAFT;
  const corrections = await correctionsOf(db, athlete.athleteId);
  const facts = await loadFacts(scope, round, corrections);
  const missing = [
    ...missingToSettle(draft, facts),
    ...misfits(draft, facts),
    ...measuresMissing(draft, facts),
  ];
  if (missing.length > 0) throw new Refusal({ reason: "draft_incomplete", missing });
  const outcomes = outcomesOf(draft, corrections, nowMs);
  const reviewId = await writeCheck(scope, round, draft, { openedAtMs: kept?.openedAtMs ?? nowMs, ...facts });
  for (const outcome of outcomes) {
    await stepCorrection(db, { ...outcome, roundId: round.id, actorPersonId: actor.personId, atMs: nowMs });
  }
  const changes = { settledAtMs: nowMs, dueAtMs: null };
  await stepRound(db, round, { step: "settled", actorPersonId: actor.personId, nowMs, changes });
  await dropDraft(db, round.id, "check");
  await tell(scope, round, outcomes, corrections, draft.note);
  return reviewId;
}

/** A round whose reply is in, or one that is out with nothing open: both by the coach who has it alone. */
async function roundToSettle({ db, actor }: Scope, roundId: string): Promise<Round> {
  const round = await roundInHand(db, roundId);
  const move = moveRound(round.state, "settled", { retakeFrom: round.retakeFrom, awaitingVerdict: 0 });
  if (!move.ok) throw new Refusal(move.refusal);
  const coachName = (await coachNameOf(db, round)) ?? "Nobody";
  const { coachPersonId } = round;
  const refusal = writingRefusal("check", { state: "answered", coachPersonId, coachName }, actor.personId);
  if (refusal) throw new Refusal(refusal);
  return round;
}

async function loadFacts({ db, athlete }: Scope, round: Round, corrections: readonly CorrectionRecord[]) {
  const clips = await playableClips(
    db,
    round.id,
    corrections.flatMap((each) => (each.clipId === null ? [] : [each.clipId])),
  );
  const idsWhere = (fits: (record: CorrectionRecord) => boolean) =>
    corrections.filter(fits).map((record) => record.id);
  return {
    openIds: idsWhere(({ standing }) => isOpen(standing.state)),
    heldIds: idsWhere(({ standing }) => standing.state === "held"),
    clips,
    viewOfClip: new Map(clips.map((clip) => [clip.id, clip.view])),
    checkpoints: await listCheckpoints(db),
    throws: (await athleteCard(db, athlete.athleteId)).throws,
  };
}

async function writeCheck(
  { db, actor, athlete, today, nowMs }: Scope,
  round: Round,
  draft: CheckDraft,
  { openedAtMs, ...facts }: { openedAtMs: number } & Awaited<ReturnType<typeof loadFacts>>,
): Promise<string> {
  const { eventMarks, judgements, marks, note } = draft;
  return insertReview(db, {
    ...{
      roundId: round.id,
      athleteId: athlete.athleteId,
      kind: "check",
      coachPersonId: actor.personId,
      note,
    },
    ...{ openedAtMs, sentAtMs: nowMs, judgedOn: today, viewOfClip: facts.viewOfClip },
    ...{ eventMarks, judgements, keeps: [], measures: measuresToSend(draft, facts), marks },
  });
}

async function tell(
  { db, athlete, nowMs }: Scope,
  round: Round,
  outcomes: readonly CheckOutcome[],
  corrections: readonly CorrectionRecord[],
  note: string,
): Promise<void> {
  const { givenName } = await nameOfAthlete(db, athlete.athleteId);
  const link = `${env.publicUrl}/family/${athlete.athleteId}/rounds/${round.id}`;
  const body = `${outcomesInWords(outcomes, corrections, note)}\n\n${link}`;
  const subject = `${givenName}'s new clip was checked: did it take?`;
  await tellFamily(db, athlete.athleteId, { kind: "check_sent", subject, body }, nowMs);
}
