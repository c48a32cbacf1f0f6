import type { CorrectionView } from "@/server/api/reviews/shapes";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { DRAFT_LIMITS, type DraftShownAgain, type ReviewDraft } from "@/server/domain/reviews/draft";
import { type MarkedClip, placeToShow } from "@/server/domain/reviews/place-to-show";
import { addCorrection, addKeep, type ClipPlace } from "./room-edits";

/** What is said of a checkpoint. */
export type SayingKind = "correction" | "keep";

/** A correction that is open from before. */
export type OpenNow = Pick<CorrectionView, "id" | "checkpointId" | "state">;

/** What saying something is held against. */
export interface SayingFacts {
  open: readonly OpenNow[];
  maxOpen: number;
  newId: () => string;
}

/** The draft with what was said, and the row that is now in hand; or why it cannot be said. */
export type Said = { document: ReviewDraft; inHand: string } | { problem: string };

/**
 * Says something of a checkpoint on the frame in sight. What is on the slip already is taken in hand again; a correction
 * that is open from before is shown again and not given twice.
 */
export function sayOf(
  document: ReviewDraft,
  kind: SayingKind,
  checkpoint: Checkpoint,
  place: ClipPlace,
  facts: SayingFacts,
): Said {
  return kind === "keep"
    ? keepOf(document, checkpoint, place, facts)
    : correctionOf(document, checkpoint, place, facts);
}

function keepOf(document: ReviewDraft, checkpoint: Checkpoint, place: ClipPlace, facts: SayingFacts): Said {
  const written = document.keeps.find((each) => each.checkpointId === checkpoint.id);
  if (written) return { document, inHand: written.id };
  const { id: checkpointId, phase, clearLooksLike: text } = checkpoint;
  return keepInWords(document, { checkpointId, phase, text }, place, facts);
}

/** Adds a keep; refused when there are as many as a review holds. */
export function keepInWords(
  document: ReviewDraft,
  of: Parameters<typeof addKeep>[1],
  place: ClipPlace,
  { newId }: Pick<SayingFacts, "newId">,
): Said {
  if (document.keeps.length >= DRAFT_LIMITS.keeps)
    return { problem: `${DRAFT_LIMITS.keeps} keeps are the most.` };
  const id = newId();
  return { document: addKeep(document, of, place, id), inHand: id };
}

function correctionOf(
  document: ReviewDraft,
  checkpoint: Checkpoint,
  place: ClipPlace,
  { open, maxOpen, newId }: SayingFacts,
): Said {
  const isOnIt = (each: { checkpointId: string }) => each.checkpointId === checkpoint.id;
  const written = document.corrections.find(isOnIt);
  if (written) return { document, inHand: written.id };
  const before = open.find(isOnIt);
  if (before) return { document: showAgain(document, before, place), inHand: before.id };
  if (open.length + document.corrections.length >= maxOpen)
    return { problem: `${maxOpen} is the most at a time, and ${open.length} are open already.` };
  const id = newId();
  return { document: addCorrection(document, checkpoint, place, id), inHand: id };
}

/**
 * Shows an open correction again on a frame, with the verdict that leaves it where it stands; one that is shown already
 * stays as it is.
 */
export function showAgain(
  document: ReviewDraft,
  { id: correctionId, state }: Pick<OpenNow, "id" | "state">,
  place: ClipPlace,
): ReviewDraft {
  if (document.shownAgain.some((row) => row.correctionId === correctionId)) return document;
  const verdict = state === "showing" ? "partly" : "not_yet";
  const added: DraftShownAgain = { correctionId, verdict, note: "", ...place };
  return { ...document, shownAgain: [...document.shownAgain, added] };
}

/** Changes how an open correction is shown again. */
export function changeShownAgain(
  document: ReviewDraft,
  correctionId: string,
  changes: Partial<Omit<DraftShownAgain, "correctionId">>,
): ReviewDraft {
  const shownAgain = document.shownAgain.map((row) =>
    row.correctionId === correctionId ? { ...row, ...changes } : row,
  );
  return { ...document, shownAgain };
}

/** Shows a correction no more; it stays open as it was. */
export function takeShownAgainBack(document: ReviewDraft, correctionId: string): ReviewDraft {
  return {
    ...document,
    shownAgain: document.shownAgain.filter((row) => row.correctionId !== correctionId),
  };
}

/** Where the moments are marked and what is in sight. */
export interface RoomPlaces {
  checkpoints: readonly Checkpoint[];
  clips: readonly MarkedClip[];
  inSight: ClipPlace;
}

/** What is open from before and not shown yet, each on the frame of its moment; what cannot be seen here is named. */
export function showAllAgain(
  document: ReviewDraft,
  open: readonly (OpenNow & Pick<CorrectionView, "checkpointName">)[],
  { checkpoints, clips, inSight }: RoomPlaces,
): { document: ReviewDraft; added: number; unseen: string[] } {
  const shown = new Set(document.shownAgain.map((row) => row.correctionId));
  const placed = open
    .filter((each) => !shown.has(each.id))
    .map((each) => {
      const checkpoint = checkpoints.find((one) => one.id === each.checkpointId);
      return { each, place: checkpoint ? placeToShow(checkpoint, clips, inSight) : null };
    });
  return {
    document: placed.reduce((now, { each, place }) => (place ? showAgain(now, each, place) : now), document),
    added: placed.filter(({ place }) => place !== null).length,
    unseen: placed.filter(({ place }) => place === null).map(({ each }) => each.checkpointName),
  };
}

/**
 * What showing all again did, in words.
 * @example shownInWords({ added: 2, unseen: [] }, 2) // "2 open corrections are shown again on this clip."
 */
export function shownInWords(done: { added: number; unseen: readonly string[] }, openCount: number): string {
  const { added, unseen } = done;
  const not = unseen.length === 0 ? "" : ` Not seen from here: ${unseen.join(", ")}.`;
  if (openCount === 0) return "Nothing is open from before.";
  if (added === 0) return unseen.length > 0 ? not.trim() : "Everything open is shown again already.";
  return `${added === 1 ? "1 open correction is" : `${added} open corrections are`} shown again on this clip.${not}`;
}
