import type { RefusalDetail } from "@/server/domain/errors/refusal";
import type { DraftKind } from "./draft";
import type { RoundState } from "./round-state";

/** The states in which each kind may be written. */
const WRITTEN_IN: Record<DraftKind, RoundState> = { review: "taken", check: "answered" };

const DONE_TO: Record<DraftKind, string> = { review: "reviewed", check: "checked" };

/** A round as far as writing on it goes; `coachName` names who has it. */
export interface WrittenRound {
  state: RoundState;
  coachPersonId: string | null;
  coachName: string;
}

/**
 * Why a person may not write on a round, or null when they may: a review is written on a round that is taken, a check
 * on one that is answered, and only by the coach who has it.
 */
export function writingRefusal(
  kind: DraftKind,
  round: WrittenRound,
  personId: string,
): Extract<RefusalDetail, { reason: "round_state" | "round_taken_by" }> | null {
  const { state, coachPersonId, coachName } = round;
  if (state !== WRITTEN_IN[kind]) return { reason: "round_state", action: DONE_TO[kind], state };
  if (coachPersonId !== personId) return { reason: "round_taken_by", coachName };
  return null;
}
