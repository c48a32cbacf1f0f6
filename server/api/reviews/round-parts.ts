import type { Db } from "@/db/client";
import type { CorrectionRecord } from "@/server/data/corrections";
import { marksOn } from "@/server/data/drawn-marks";
import { measurementsOn, repeatedMeasures } from "@/server/data/measurements";
import { namesOf } from "@/server/data/names";
import { remarkText } from "@/server/data/remarks";
import { eventMarksOn, type SentReview } from "@/server/data/reviews";
import type { Round } from "@/server/data/rounds";
import { Refusal } from "@/server/domain/errors/refusal";
import { measureErrors } from "@/server/domain/mechanics/measure-error";
import { fullName } from "@/server/domain/people/person";
import type { DraftKind } from "@/server/domain/reviews/draft";
import { practiceDays } from "@/server/domain/reviews/practice";
import { writingRefusal } from "@/server/domain/reviews/writing";
import { dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";
import { roundInHand } from "../round-in-hand";
import type { CorrectionView, RoundView, SentView } from "./shapes";

/** The name of the coach who has a round, or null while nobody has. */
export async function coachNameOf(db: Db, round: Round): Promise<string | null> {
  const { coachPersonId } = round;
  if (coachPersonId === null) return null;
  const name = (await namesOf(db, [coachPersonId])).get(coachPersonId);
  return name ? fullName(name) : null;
}

/** A round that the caller may write on. @throws Refusal `round_state` or `round_taken_by` when they may not */
export async function roundToWrite(scope: Scope, roundId: string, kind: DraftKind): Promise<Round> {
  const round = await roundInHand(scope.db, roundId);
  const coachName = (await coachNameOf(scope.db, round)) ?? "Nobody";
  const { state, coachPersonId } = round;
  const refusal = writingRefusal(kind, { state, coachPersonId, coachName }, scope.actor.personId);
  if (refusal) throw new Refusal(refusal);
  return round;
}

/** A round as a screen tells it. */
export async function roundView(db: Db, round: Round): Promise<RoundView> {
  const { id, state, receivedAtMs, dueAtMs, sentAtMs, replyFrom, lapsesOn, answeredAtMs, settledAtMs } =
    round;
  const retakeReason = state === "retake" ? await remarkText(db, round.retakeRemarkId) : "";
  return {
    ...{ id, state, receivedAtMs, dueAtMs, sentAtMs, replyFrom, lapsesOn, answeredAtMs, settledAtMs },
    retakeReason,
  };
}

/** A correction as a screen tells it, with the days of practice that may be ticked today. */
export function correctionView(
  record: CorrectionRecord,
  scope: Pick<Scope, "athlete" | "today">,
): CorrectionView {
  const { state, cameBack, yesInARow } = record.standing;
  const givenOn = dayOf(record.givenAtMs, scope.athlete.zone);
  return {
    id: record.id,
    roundId: record.roundId,
    checkpointId: record.checkpointId,
    checkpointName: record.checkpointName,
    phase: record.phase,
    event: record.event,
    cue: record.cue,
    drill: record.drill,
    clipId: record.clipId,
    frame: record.frame,
    position: record.position,
    voiceId: record.voiceId,
    ...{ state, cameBack, yesInARow, givenOn },
    givenAtMs: record.givenAtMs,
    happenings: record.happenings.map(({ sessionId, ...each }) => each),
    practisedOn: record.practisedOn,
    tickableDays: practiceDays({ givenOn, state, today: scope.today }),
  };
}

/** A sent review as a screen tells it. */
export function sentView({ coachPersonId, ...sent }: SentReview): SentView {
  return sent;
}

/** The corrections a round is about: given or judged in it, and while it goes on those still open from before. */
export function correctionsOfRound(records: readonly CorrectionRecord[], round: Round): CorrectionRecord[] {
  const goesOn = round.settledAtMs === null && round.state !== "withdrawn" && round.state !== "lapsed";
  return records.filter((record) => {
    const isOpen = record.standing.state === "given" || record.standing.state === "showing";
    return record.happenings.some((each) => each.roundId === round.id) || (goesOn && isOpen);
  });
}

/** The moments, measures and marks that sent reviews left on some clips, and how sure measures are. */
export async function measuredOn(db: Db, clips: readonly { id: string }[]) {
  const clipIds = clips.map((clip) => clip.id);
  return {
    eventMarks: await eventMarksOn(db, clipIds),
    measurements: await measurementsOn(db, clipIds),
    marks: await marksOn(db, clipIds),
    measureErrors: measureErrors(await repeatedMeasures(db)),
  };
}
