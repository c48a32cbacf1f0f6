import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { misfits } from "@/server/domain/reviews/checkpoint-fit";
import type { CheckDraft, ReviewDraft } from "@/server/domain/reviews/draft";
import { measuresMissing } from "@/server/domain/reviews/measures-to-send";
import { missingToSend } from "@/server/domain/reviews/readiness";
import { type Recap, recapOf } from "@/server/domain/reviews/recap";
import { missingInShownAgain, recapShownAgain } from "@/server/domain/reviews/shown-again";

/** The recap of a review as it stands in its draft. */
export function recapIn(
  document: ReviewDraft,
  { checkpoints, corrections }: Pick<RoomView, "checkpoints" | "corrections">,
): Recap {
  const nameOf = (id: string) => checkpoints.find((each) => each.id === id)?.name ?? "";
  return recapOf({
    keeps: document.keeps,
    corrections: document.corrections.map((row) => ({ ...row, checkpointName: nameOf(row.checkpointId) })),
    shownAgain: recapShownAgain(document.shownAgain, corrections),
  });
}

/** The checkpoints the academy offers, and those put aside since that the draft began with. */
export function offered(
  checkpoints: readonly Checkpoint[],
  document: ReviewDraft | Pick<CheckDraft, "judgements">,
): Checkpoint[] {
  const corrections = "corrections" in document ? document.corrections : [];
  const used = new Set([...document.judgements, ...corrections].map((row) => row.checkpointId));
  return checkpoints.filter((each) => each.active || used.has(each.id));
}

/** What a draft is held against, by the same rules as when it is sent. */
export function checkpointFacts(room: RoomView) {
  const viewOfClip = new Map(room.clips.map((clip) => [clip.id, clip.view]));
  return { checkpoints: room.checkpoints, viewOfClip };
}

/** What a review still needs before it can be sent. */
export function missingInReview(
  document: ReviewDraft,
  room: RoomView,
  clips: readonly ClipView[],
  openIds: readonly string[],
): string[] {
  const facts = { openCount: openIds.length, max: room.maxOpen, clips };
  return [
    ...missingToSend(document, facts),
    ...misfits(document, checkpointFacts(room)),
    ...measuresMissing(document, { throws: room.athlete.throws, clips }),
    ...missingInShownAgain(document.shownAgain, openIds),
  ];
}
