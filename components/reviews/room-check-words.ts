import type { MarkedFrames } from "@/components/clips/event-strip";
import type { CorrectionView, RoomView } from "@/server/api/reviews/shapes";
import { misfits } from "@/server/domain/reviews/checkpoint-fit";
import { isOpen } from "@/server/domain/reviews/correction-state";
import type { CheckDraft } from "@/server/domain/reviews/draft";
import { measuresMissing } from "@/server/domain/reviews/measures-to-send";
import { missingToSettle } from "@/server/domain/reviews/readiness";
import { type CheckedCorrection, outcomesInWords, outcomesOf } from "@/server/domain/reviews/settling";
import { checkpointFacts } from "./room-recap";

/** What a check still needs before it settles the round. */
export function missingInCheck(document: CheckDraft, room: RoomView): string[] {
  const idsWhere = (fits: (each: CorrectionView) => boolean) =>
    room.corrections.filter(fits).map((each) => each.id);
  const facts = {
    openIds: idsWhere((each) => isOpen(each.state)),
    heldIds: idsWhere((each) => each.state === "held"),
    clips: room.clips,
  };
  return [
    ...missingToSettle(document, facts),
    ...misfits(document, checkpointFacts(room)),
    ...measuresMissing(document, { throws: room.athlete.throws, clips: room.clips }),
  ];
}

/** What the family will read of a check that is ready. */
export function checkWords(document: CheckDraft, room: RoomView): string {
  if (missingInCheck(document, room).length > 0) return "";
  const corrections = room.corrections.map(checked);
  return outcomesInWords(outcomesOf(document, corrections, 0), corrections, document.note);
}

function checked({ state, cameBack, yesInARow, ...each }: CorrectionView): CheckedCorrection {
  return { ...each, standing: { state, cameBack, yesInARow, history: [] } };
}

/**
 * The frames on which old and new show a correction: where it was given, and on the new clip the frame chosen for it,
 * else the one as far from its event, else that event; null where nothing is known.
 */
export function sameMoment(
  correction: Pick<CorrectionView, "id" | "frame" | "event">,
  { oldMarks, newMarks }: { oldMarks: MarkedFrames; newMarks: MarkedFrames },
  document: CheckDraft,
): { old: number | null; new: number | null } {
  const chosen = document.verdicts.find((row) => row.correctionId === correction.id)?.frame ?? null;
  const [oldEvent, newEvent] = [oldMarks[correction.event], newMarks[correction.event]];
  if (chosen !== null) return { old: correction.frame, new: chosen };
  if (newEvent === undefined) return { old: correction.frame, new: null };
  const since = correction.frame === null || oldEvent === undefined ? 0 : correction.frame - oldEvent;
  return { old: correction.frame, new: Math.max(0, newEvent + since) };
}
