import type { CorrectionEventKind } from "./correction-state";
import { type DraftShownAgain, EMPTY_CHECK_DRAFT } from "./draft";
import type { RecapShownAgain } from "./recap";
import { type CheckedCorrection, type CheckOutcome, outcomesOf } from "./settling";

/**
 * What showing open corrections again does to them, in the delivery's order: a verdict on this clip that leaves them
 * open. None is given anew, so the number that is open stays the same.
 * @throws Error when one is not among the corrections
 */
export function shownAgainOutcomes(
  rows: readonly DraftShownAgain[],
  corrections: readonly CheckedCorrection[],
  atMs: number,
): CheckOutcome[] {
  return outcomesOf({ ...EMPTY_CHECK_DRAFT, verdicts: [...rows] }, corrections, atMs);
}

/** What stands in the way of showing these again, as fragments for one sentence: one is not open any more. */
export function missingInShownAgain(rows: readonly DraftShownAgain[], openIds: readonly string[]): string[] {
  const isGone = rows.some((row) => !openIds.includes(row.correctionId));
  return isGone ? ["leave out what is shown again and is not open any more"] : [];
}

/**
 * Which corrections of a draft would be a second one on their checkpoint, as fragments for one sentence, one a checkpoint:
 * an open correction is never given twice, it is shown again; and a draft corrects each checkpoint once.
 */
export function givenTwice(
  corrections: readonly { checkpointId: string }[],
  open: readonly { checkpointId: string }[],
  checkpoints: readonly { id: string; name: string }[],
): string[] {
  const ids = corrections.map((each) => each.checkpointId);
  return [...new Set(ids)].flatMap((id) => {
    const name = checkpoints.find((each) => each.id === id)?.name ?? "a checkpoint";
    if (open.some((each) => each.checkpointId === id))
      return [`leave out the new correction on ${name}: one is open there already, show that one again`];
    const isOnce = ids.filter((each) => each === id).length === 1;
    return isOnce ? [] : [`leave one correction on ${name}: the draft has several`];
  });
}

/** A correction as far as the recap tells it. */
export interface ToldCorrection {
  id: string;
  phase: RecapShownAgain["phase"];
  checkpointName: string;
  cue: string;
  drill: string;
}

/** The rows as the recap tells them, each on its frame of today; a correction that is not there any more is left out. */
export function recapShownAgain(
  rows: readonly DraftShownAgain[],
  corrections: readonly ToldCorrection[],
): RecapShownAgain[] {
  return rows.flatMap(({ correctionId, verdict, note, frame }) => {
    const correction = corrections.find((each) => each.id === correctionId);
    if (correction === undefined) return [];
    const { id, phase, checkpointName, cue, drill } = correction;
    return [{ id, phase, checkpointName, cue, drill, verdict, note, frame }];
  });
}

/** What a correction says of where it was seen. */
export interface SeenCorrection {
  clipId: string | null;
  frame: number | null;
  happenings: readonly {
    kind: CorrectionEventKind;
    roundId: string | null;
    clipId: string | null;
    frame: number | null;
  }[];
}

/** Where a correction was last seen in a round; else where it was given. Both are null when that was on no frame. */
export function seenInRound(
  correction: SeenCorrection,
  roundId: string,
): { clipId: string | null; frame: number | null } {
  const here = correction.happenings.findLast((each) => each.roundId === roundId && each.frame !== null);
  const { clipId, frame } = here ?? correction;
  return { clipId, frame };
}
