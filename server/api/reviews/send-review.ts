import { findSettings } from "@/server/data/academy-settings";
import { insertCharge } from "@/server/data/charges";
import { listCheckpoints } from "@/server/data/checkpoints";
import { giveCorrections, openCorrectionsOf, stepCorrection } from "@/server/data/corrections";
import { dropDraft, findDraft, type KeptDraft } from "@/server/data/drafts";
import { nameOfAthlete } from "@/server/data/names";
import { tellFamily } from "@/server/data/notices";
import { replyWindowFrom } from "@/server/data/reply-windows";
import { insertReview } from "@/server/data/reviews";
import { playableClips } from "@/server/data/round-clips";
import { homeSiteOf, type Round, stepRound } from "@/server/data/rounds";
import { athleteCard } from "@/server/data/season";
import { sendVoices, waitingVoices } from "@/server/data/voice-notes";
import { Refusal } from "@/server/domain/errors/refusal";
import { misfits } from "@/server/domain/reviews/checkpoint-fit";
import { mayAddCorrection } from "@/server/domain/reviews/correction-state";
import type { ReviewDraft } from "@/server/domain/reviews/draft";
import { measuresMissing, measuresToSend } from "@/server/domain/reviews/measures-to-send";
import { missingToSend } from "@/server/domain/reviews/readiness";
import { asTheDeliveryRuns, countInWords, recapInWords, recapOf } from "@/server/domain/reviews/recap";
import { replyOffer } from "@/server/domain/reviews/reply-offer";
import type { ReplyWindow } from "@/server/domain/reviews/reply-window";
import {
  givenTwice,
  missingInShownAgain,
  recapShownAgain,
  shownAgainOutcomes,
} from "@/server/domain/reviews/shown-again";
import { voicesMissing, voicesNamed } from "@/server/domain/reviews/voice-note";
import { env } from "@/server/env";
import type { Scope } from "../context";
import { roundToWrite } from "./round-parts";

/**
 * Sends the review of a round as its draft stands: corrections and keeps, the promise kept, the family told, the review
 * charged.
 * @throws Refusal when the caller may not, the draft is another by now or not ready, or nothing is priced
 */
export async function sendReview(scope: Scope, input: { roundId: string; version: number }): Promise<string> {
  const { db, athlete, nowMs } = scope;
  const round = await roundToWrite(scope, input.roundId, "review");
  const draft = await findDraft(db, round.id, "review");
  if (draft?.version !== input.version) throw new Refusal({ reason: "changed_meanwhile" });
  const facts = await loadFacts(scope, round);
  refuseUnready(draft.document, facts);
  const reviewId = await writeReview(scope, round, draft, facts);
  await showAgain(scope, round, draft.document, facts);
  await charge(scope, reviewId);
  const window = await replyWindowFrom(db, athlete.athleteId, nowMs);
  const { replyFrom, lapsesOn } = window;
  const changes = { sentAtMs: nowMs, dueAtMs: null, replyFrom, lapsesOn };
  await stepRound(db, round, { step: "sent", actorPersonId: scope.actor.personId, nowMs, changes });
  await dropDraft(db, round.id, "review");
  await tell(scope, round, draft.document, facts, window);
  return reviewId;
}

type Facts = Awaited<ReturnType<typeof loadFacts>>;

async function loadFacts({ db, actor, athlete }: Scope, round: Round) {
  const settings = await findSettings(db);
  if (!settings) throw new Error("There is no academy yet.");
  const clips = await playableClips(db, round.id);
  const open = await openCorrectionsOf(db, athlete.athleteId);
  return {
    max: settings.maxOpenCorrections,
    open,
    openCount: open.length,
    clips,
    viewOfClip: new Map(clips.map((clip) => [clip.id, clip.view])),
    checkpoints: await listCheckpoints(db),
    throws: (await athleteCard(db, athlete.athleteId)).throws,
    voices: await waitingVoices(db, round.id, actor.personId),
  };
}

function refuseUnready(draft: ReviewDraft, facts: Facts): void {
  const { openCount, max, open } = facts;
  const openIds = open.map((each) => each.id);
  if (draft.corrections.length > 0 && !mayAddCorrection(openCount, max)) {
    throw new Refusal({ reason: "corrections_full", open: openCount, max });
  }
  const missing = [
    ...missingToSend(draft, facts),
    ...misfits(draft, facts),
    ...measuresMissing(draft, facts),
    ...voicesMissing(draft, facts.voices),
    ...missingInShownAgain(draft.shownAgain, openIds),
    ...givenTwice(draft.corrections, open, facts.checkpoints),
  ];
  if (missing.length > 0) throw new Refusal({ reason: "draft_incomplete", missing });
}

async function writeReview(
  { db, actor, athlete, today, nowMs }: Scope,
  round: Round,
  draft: KeptDraft<"review">,
  facts: Facts,
): Promise<string> {
  const { document, openedAtMs } = draft;
  const { athleteId } = athlete;
  const reviewId = await insertReview(db, {
    ...{ roundId: round.id, athleteId, kind: "review", coachPersonId: actor.personId, note: "" },
    ...{ openedAtMs, sentAtMs: nowMs, judgedOn: today, viewOfClip: facts.viewOfClip },
    measures: measuresToSend(document, facts),
    marks: document.marks,
    eventMarks: document.eventMarks,
    judgements: document.judgements,
    keeps: asTheDeliveryRuns(document.keeps),
  });
  await giveCorrections(db, {
    ...{ athleteId, reviewId, roundId: round.id, actorPersonId: actor.personId, atMs: nowMs },
    corrections: asTheDeliveryRuns(document.corrections),
  });
  await sendVoices(db, round.id, voicesNamed(document));
  return reviewId;
}

/** Notes on each correction that is still open and was seen again what was said of it on this clip. */
async function showAgain(
  { db, actor, nowMs }: Scope,
  round: Round,
  { shownAgain }: ReviewDraft,
  { open }: Facts,
): Promise<void> {
  for (const outcome of shownAgainOutcomes(shownAgain, open, nowMs)) {
    await stepCorrection(db, { ...outcome, roundId: round.id, actorPersonId: actor.personId, atMs: nowMs });
  }
}

async function charge({ db, actor, athlete, today, nowMs }: Scope, reviewId: string): Promise<void> {
  await insertCharge(db, {
    kind: "review",
    athleteId: athlete.athleteId,
    source: { reviewId },
    coachPersonId: actor.personId,
    siteId: await homeSiteOf(db, athlete.athleteId),
    chargedOn: today,
    atMs: nowMs,
  });
}

async function tell(
  { db, athlete, today, nowMs }: Scope,
  round: Round,
  draft: ReviewDraft,
  { checkpoints, open }: Facts,
  window: ReplyWindow,
): Promise<void> {
  const nameOf = new Map(checkpoints.map((each) => [each.id, each.name]));
  const recap = recapOf({
    keeps: draft.keeps,
    corrections: draft.corrections.map((each) => ({
      ...each,
      checkpointName: nameOf.get(each.checkpointId) ?? "",
    })),
    shownAgain: recapShownAgain(draft.shownAgain, open),
  });
  const { givenName } = await nameOfAthlete(db, athlete.athleteId);
  const reply = replyOffer({ ...window, state: "sent", today });
  const link = `${env.publicUrl}/family/${athlete.athleteId}/rounds/${round.id}`;
  const body = `${recapInWords(recap)}\n\nA new clip: ${reply.words}\n${link}`;
  const stillOpen = recap.shownAgain.length > 0 ? `, ${recap.shownAgain.length} still open` : "";
  const subject = `The review for ${givenName} is here: ${countInWords(recap.count)}${stillOpen}`;
  await tellFamily(db, athlete.athleteId, { kind: "review_sent", subject, body }, nowMs);
}
