import {
  type ArmQuestion,
  type PitchesAllowed,
  pitchesAllowed,
} from "@/server/domain/throwing/pitches-allowed";

/** What a booked session asks of an arm, beside what the book leaves it now. */
export interface PlannedNow {
  plannedPitches: number;
  answer: PitchesAllowed;
  hasRoom: boolean;
}

/**
 * A planned session weighed against everything else known by now, as it would be if it were booked afresh. Worked out
 * whenever it is shown, never kept: the next entry in the log may change it.
 * @param plannedId the plan's id among `arm.planned`
 * @returns null when there is no such plan, or it asks for no throws
 */
export function plannedNow(arm: Omit<ArmQuestion, "day">, plannedId: string): PlannedNow | null {
  const plan = arm.planned.find(({ id }) => id === plannedId);
  if (plan === undefined || plan.pitches === 0) return null;
  const others = arm.planned.filter(({ id }) => id !== plannedId);
  const answer = pitchesAllowed({ ...arm, planned: others, day: plan.plannedOn });
  const hasRoom = answer.pitches === null || answer.pitches >= plan.pitches;
  return { plannedPitches: plan.pitches, answer, hasRoom };
}

/**
 * "asks for 40, at most 15 by the book now"; "asks for 30, no published limit"; "asks for 40, none by the book now".
 */
export function plannedNowInWords({ plannedPitches, answer }: PlannedNow): string {
  const asks = `asks for ${plannedPitches}`;
  if (answer.status === "pain") return `${asks}, no throwing now: pain reported`;
  if (answer.pitches === null) return `${asks}, no published limit`;
  return answer.pitches === 0
    ? `${asks}, none by the book now`
    : `${asks}, at most ${answer.pitches} by the book now`;
}
