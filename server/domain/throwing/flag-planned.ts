import { type ArmQuestion, type PitchesAllowed, pitchesAllowed } from "./pitches-allowed";
import { countsTowardLimit, MOUND_WORK_KINDS, type PlannedThrows } from "./throw-entry";

/** A planned session that asks for more than the book leaves; `answer` is what it may be, all else on the plan kept. */
export interface PlannedWithoutRoom {
  planned: PlannedThrows;
  answer: PitchesAllowed;
}

/**
 * The bullpens and lessons from today on that no longer have room, earliest first: what a game logged later leaves
 * behind. Each is weighed against everything else on the plan, as any screen would weigh it, so of two that stand in
 * each other's way both are named. Under a pain stop everything planned that throws is named, of whatever kind.
 * Ages without a published limit are never named for their number.
 */
export function plannedWithoutRoom(question: Omit<ArmQuestion, "day">): PlannedWithoutRoom[] {
  return question.planned
    .filter((planned) => planned.pitches > 0 && planned.plannedOn >= question.today)
    .filter((planned) => question.pain !== null || isCountedMoundWork(planned, question))
    .toSorted((a, b) => a.plannedOn.localeCompare(b.plannedOn))
    .map((planned) => {
      const others = question.planned.filter((other) => other.id !== planned.id);
      return { planned, answer: pitchesAllowed({ ...question, planned: others, day: planned.plannedOn }) };
    })
    .filter(({ planned, answer }) => answer.pitches !== null && answer.pitches < planned.pitches);
}

function isCountedMoundWork(planned: PlannedThrows, { reading }: Pick<ArmQuestion, "reading">): boolean {
  return MOUND_WORK_KINDS.some((kind) => kind === planned.kind) && countsTowardLimit(planned.kind, reading);
}
