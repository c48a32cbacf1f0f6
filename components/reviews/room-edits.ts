import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import type { DeliveryEvent, Phase } from "@/server/domain/mechanics/delivery";
import type { JudgementScore } from "@/server/domain/mechanics/judgement";
import type {
  CheckDraft,
  DraftCorrection,
  DraftKeep,
  DraftVerdict,
  EventMark,
  ReviewDraft,
} from "@/server/domain/reviews/draft";

/* What a hand on the screen does to a draft: each gives a new document and leaves the old one as it was. */

type Seen = Pick<ReviewDraft, "eventMarks" | "judgements">;

/** A place on a clip. */
export interface ClipPlace {
  clipId: string;
  frame: number;
}

/** Marks a moment on a frame, in place of an earlier mark on that clip; null takes the mark away. */
export function markEvent<Document extends Seen>(
  document: Document,
  clipId: string,
  event: DeliveryEvent,
  frame: number | null,
): Document {
  const others = document.eventMarks.filter((mark) => mark.clipId !== clipId || mark.event !== event);
  return { ...document, eventMarks: frame === null ? others : [...others, { clipId, event, frame }] };
}

/** Judges a checkpoint on a frame, in place of an earlier judgement on that clip; null takes it away. */
export function judge<Document extends Seen>(
  document: Document,
  checkpointId: string,
  place: ClipPlace,
  score: JudgementScore | null,
): Document {
  const others = document.judgements.filter(
    (row) => row.checkpointId !== checkpointId || row.clipId !== place.clipId,
  );
  return {
    ...document,
    judgements: score === null ? others : [...others, { checkpointId, ...place, score }],
  };
}

/** Puts a correction on the slip, its cue still to be written. */
export function addCorrection(
  document: ReviewDraft,
  checkpoint: Pick<Checkpoint, "id" | "phase">,
  place: ClipPlace,
  id: string,
): ReviewDraft {
  const added = {
    id,
    checkpointId: checkpoint.id,
    phase: checkpoint.phase,
    cue: "",
    drill: "",
    voiceId: null,
    ...place,
  };
  return { ...document, corrections: [...document.corrections, added] };
}

/** Changes a correction on the slip. */
export function changeCorrection(
  document: ReviewDraft,
  id: string,
  changes: Partial<Omit<DraftCorrection, "id">>,
): ReviewDraft {
  return {
    ...document,
    corrections: document.corrections.map((row) => (row.id === id ? { ...row, ...changes } : row)),
  };
}

/** Takes a correction off the slip. */
export function removeCorrection(document: ReviewDraft, id: string): ReviewDraft {
  return { ...document, corrections: document.corrections.filter((row) => row.id !== id) };
}

/** Adds a keep; of no checkpoint when it is the coach's own. */
export function addKeep(
  document: ReviewDraft,
  of: { checkpointId: string | null; phase: Phase; text: string },
  place: ClipPlace | null,
  id: string,
): ReviewDraft {
  const added: DraftKeep = {
    id,
    ...of,
    clipId: place?.clipId ?? null,
    frame: place?.frame ?? null,
    voiceId: null,
  };
  return { ...document, keeps: [...document.keeps, added] };
}

/** Changes a keep. */
export function changeKeep(
  document: ReviewDraft,
  id: string,
  changes: Partial<Omit<DraftKeep, "id">>,
): ReviewDraft {
  return { ...document, keeps: document.keeps.map((row) => (row.id === id ? { ...row, ...changes } : row)) };
}

/** Takes a keep away. */
export function removeKeep(document: ReviewDraft, id: string): ReviewDraft {
  return { ...document, keeps: document.keeps.filter((row) => row.id !== id) };
}

/** Changes the verdict on a correction; begins one when there is none. A verdict takes a retirement's place. */
export function changeVerdict(
  document: CheckDraft,
  correctionId: string,
  changes: Partial<Omit<DraftVerdict, "correctionId">>,
): CheckDraft {
  const before = document.verdicts.find((row) => row.correctionId === correctionId);
  const blank = { correctionId, verdict: null, note: "", clipId: null, frame: null };
  const others = document.verdicts.filter((row) => row.correctionId !== correctionId);
  const retirements = document.retirements.filter((row) => row.correctionId !== correctionId);
  return { ...document, retirements, verdicts: [...others, { ...(before ?? blank), ...changes }] };
}

/** Retires a correction with a reason, in place of a verdict; null takes that back. */
export function changeRetirement(
  document: CheckDraft,
  correctionId: string,
  reason: string | null,
): CheckDraft {
  const retirements = document.retirements.filter((row) => row.correctionId !== correctionId);
  if (reason === null) return { ...document, retirements };
  const verdicts = document.verdicts.filter((row) => row.correctionId !== correctionId);
  return { ...document, verdicts, retirements: [...retirements, { correctionId, reason }] };
}

/** The marks on one clip: those being written stand for those sent before. */
export function marksOn(
  clipId: string,
  sent: readonly EventMark[],
  written: readonly EventMark[],
): Partial<Record<DeliveryEvent, number>> {
  const own = [...sent, ...written].filter((mark) => mark.clipId === clipId);
  return Object.fromEntries(own.map((mark) => [mark.event, mark.frame]));
}
