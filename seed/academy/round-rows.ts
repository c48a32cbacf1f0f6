import { pausePromise } from "@/server/domain/reviews/promise";
import type { RoundEventKind } from "@/server/domain/reviews/round-state";
import { speakerFor } from "./roster";
import { clipAskedFor, dayIn, hoursOf, owedAtMs, type RoundPlan } from "./round-plan";
import { keepRemark, type World } from "./world";

const WITHDRAWN_BECAUSE = "Sent the wrong clip.";

/** When the first usable or unusable clip of a round came in. */
export function receivedAtMs({ first, retake }: RoundPlan): number {
  return retake?.unusable.sentInAtMs ?? first[0]?.sentInAtMs ?? 0;
}

/** Writes a round as it stands today, and everything that happened to it. */
export function writeRound(world: World, plan: RoundPlan): string {
  const { athlete, outcome, review, check, reply } = plan;
  const roundId = world.id("rnd");
  const isTaken = outcome !== "received" && outcome !== "withdrawn";
  const retakeRemarkId = plan.retake ? keepRemark(world, plan.retake.reason) : null;
  world.rows.round.push({
    ...{ id: roundId, athleteId: athlete.id, siteId: athlete.siteId, state: outcome },
    coachPersonId: isTaken ? athlete.coachId : null,
    receivedAtMs: receivedAtMs(plan),
    takenAtMs: whenTaken(plan),
    dueAtMs: dueNow(world, plan),
    ...asked(plan),
    ...paused(world, plan, retakeRemarkId),
    sentAtMs: review?.sentAtMs ?? null,
    answeredAtMs: reply[0]?.sentInAtMs ?? null,
    settledAtMs: check?.settledAtMs ?? null,
  });
  writeEvents(world, roundId, plan, retakeRemarkId);
  return roundId;
}

const whenTaken = ({ retake, review, takenAtMs }: RoundPlan) =>
  retake?.takenAtMs ?? review?.takenAtMs ?? takenAtMs;

/** When the academy owes the next step; a retake that was answered begins where it was paused, about a day on. */
function dueNow(world: World, { athlete, outcome, first, reply }: RoundPlan): number | null {
  if (outcome === "answered") return owedAtMs(world, athlete, reply[0]?.sentInAtMs ?? 0);
  if (outcome !== "received" && outcome !== "taken") return null;
  return owedAtMs(world, athlete, first[0]?.sentInAtMs ?? 0);
}

/** When a clip was asked for after the review; nothing is asked any more once a reply is in. */
function asked({ review, reply }: RoundPlan) {
  if (!review || reply.length > 0) return { replyFrom: null, lapsesOn: null };
  return { replyFrom: review.replyFrom, lapsesOn: review.lapsesOn };
}

/** A retake that still waits: the promise stands still, and another clip is asked for. */
function paused(world: World, { athlete, outcome, retake }: RoundPlan, retakeRemarkId: string | null) {
  if (outcome !== "retake" || !retake) return { pausedOpenMs: null, retakeFrom: null, retakeRemarkId: null };
  const due = owedAtMs(world, athlete, retake.unusable.sentInAtMs);
  const pausedOpenMs = pausePromise(hoursOf(world, athlete), due, retake.askedAtMs);
  const window = clipAskedFor(athlete, dayIn(world, retake.askedAtMs));
  return { pausedOpenMs, retakeFrom: "taken" as const, retakeRemarkId, ...window };
}

function writeEvents(world: World, roundId: string, plan: RoundPlan, retakeRemarkId: string | null): void {
  const { athlete, retake, review, check, outcome, endedAtMs } = plan;
  const day = dayIn(world, receivedAtMs(plan));
  const family = speakerFor(athlete, day);
  const put = (
    kind: RoundEventKind,
    atMs: number | null | undefined,
    actorPersonId: string | null,
    remarkId: string | null = null,
    toPersonId: string | null = null,
  ) => {
    if (atMs === undefined || atMs === null) return;
    world.rows.roundEvent.push({
      id: world.id("rne"),
      roundId,
      kind,
      actorPersonId,
      toPersonId,
      remarkId,
      atMs,
    });
  };
  put("received", receivedAtMs(plan), family);
  const takenAtMs = whenTaken(plan);
  put("taken", takenAtMs, plan.handedOverBy ?? athlete.coachId);
  if (plan.handedOverBy && takenAtMs) {
    put("handed_over", takenAtMs + 30_000, plan.handedOverBy, null, athlete.coachId);
  }
  put("retake_asked", retake?.askedAtMs, athlete.coachId, retakeRemarkId);
  if (retake) put("clip_replaced", plan.first[0]?.sentInAtMs, family);
  put("sent", review?.sentAtMs, athlete.coachId);
  put("answered", plan.reply[0]?.sentInAtMs, family);
  put("settled", check?.settledAtMs, athlete.coachId);
  if (outcome === "lapsed") put("lapsed", endedAtMs, null);
  if (outcome === "withdrawn") put("withdrawn", endedAtMs, family, keepRemark(world, WITHDRAWN_BECAUSE));
}
