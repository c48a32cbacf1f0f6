import { dayOf } from "@/server/domain/time/calendar-day";
import {
  type AcademyTime,
  type CoachHours,
  coachWorks,
  type SiteHours,
  siteOpen,
  suitedLanes,
} from "./academy-time";
import { type ArmResting, type PlannedArm, type RoomOn, sessionRoom } from "./arm-room";
import { isTaken, type Span } from "./claims";
import { isWithin } from "./intervals";
import {
  type AthleteOnSession,
  type SecondAdult,
  type SecondAdultMissing,
  secondAdultMissing,
} from "./second-adult";
import { type SessionKind, sessionEndMs } from "./session-kind";

/** One exact session that somebody wants to book, or to move to. */
export interface ProposedSession {
  kind: SessionKind;
  startsAtMs: number;
  durationMin: number;
  siteId: string;
  laneId: string;
  coachId: string;
  /** Planned pitches are 0 in a session without mound throws. */
  athletes: readonly (AthleteOnSession & PlannedArm)[];
  secondAdult: SecondAdult | null;
}

/** What is known around it. `noticeMin` is 0 for staff who book on the spot. */
export interface TimeKnowledge extends AcademyTime {
  nowMs: number;
  noticeMin: number;
  roomOn: RoomOn;
}

/** Why a proposed session cannot be held, with the facts that a screen needs to say so. */
export type TimeRefusal =
  | { reason: "too_soon_notice"; earliestMs: number }
  | { reason: "site_closed"; siteId: string }
  | { reason: "outside_coach_hours"; coachId: string }
  | { reason: "no_lane"; laneId: string; freeLaneIds: string[] }
  | { reason: "coach_taken"; coachId: string }
  | { reason: "lane_taken"; laneId: string; freeLaneIds: string[] }
  | { reason: "athlete_taken"; athleteId: string }
  | SecondAdultMissing
  | { reason: "second_adult_taken"; personId: string }
  | (ArmResting & { dryWorkFits: boolean })
  | { reason: "too_many_pitches"; athleteId: string; atMost: number };

/**
 * Everything that speaks against one exact session, in the order it should be said; nothing when it can be booked.
 * A lane that is at another site or of a kind that does not suit is `no_lane`; the lanes that would do are named. A
 * session without mound throws is never refused for the arm, and a refusal for the arm says whether such a session
 * would fit then and there. Starts need not fall on a finder's step; in an hour that comes twice either may be taken.
 * @throws RangeError when the length is out of range or the site unknown (the caller's fault)
 */
export function checkTime(proposed: ProposedSession, known: TimeKnowledge): TimeRefusal[] {
  const site = known.sites.find(({ id }) => id === proposed.siteId);
  if (site === undefined) throw new RangeError(`No such site: ${proposed.siteId}`);
  const span = {
    startsAtMs: proposed.startsAtMs,
    endsAtMs: sessionEndMs(proposed.startsAtMs, proposed.durationMin),
  };
  const besideLane = [
    ...hoursRefusals(proposed, known, site, span),
    ...peopleRefusals(proposed, known, dayOf(span.startsAtMs, site.hours.zone), span),
  ];
  const dryWorkFits = besideLane.length === 0 && freeLaneIds(known, site.id, "dry_work", span).length > 0;
  return [
    ...besideLane,
    ...laneRefusals(proposed, known, span),
    ...armRefusals(proposed, known, dayOf(span.startsAtMs, site.hours.zone), dryWorkFits),
  ].sort((a, b) => ORDER.indexOf(a.reason) - ORDER.indexOf(b.reason));
}

/** The order in which refusals are said: what no other choice can mend first, then who and what is taken, then the arm. */
const ORDER: readonly TimeRefusal["reason"][] = [
  "too_soon_notice",
  "site_closed",
  "outside_coach_hours",
  "no_lane",
  "coach_taken",
  "lane_taken",
  "athlete_taken",
  "second_adult_missing",
  "second_adult_taken",
  "arm_resting",
  "too_many_pitches",
];

function hoursRefusals(
  proposed: ProposedSession,
  known: TimeKnowledge,
  site: SiteHours,
  span: Span,
): TimeRefusal[] {
  const { startsAtMs, endsAtMs } = span;
  const refusals: TimeRefusal[] = [];
  const earliestMs = known.nowMs + known.noticeMin * 60_000;
  if (startsAtMs < earliestMs) refusals.push({ reason: "too_soon_notice", earliestMs });
  if (!isWithin(siteOpen(site, startsAtMs, endsAtMs), startsAtMs, endsAtMs)) {
    refusals.push({ reason: "site_closed", siteId: site.id });
  }
  const coach: CoachHours | undefined = known.coaches.find(({ id }) => id === proposed.coachId);
  const works = coach === undefined ? [] : coachWorks(coach, site, startsAtMs, endsAtMs);
  if (!isWithin(works, startsAtMs, endsAtMs)) {
    refusals.push({ reason: "outside_coach_hours", coachId: proposed.coachId });
  }
  return refusals;
}

function peopleRefusals(
  proposed: ProposedSession,
  known: TimeKnowledge,
  day: string,
  span: Span,
): TimeRefusal[] {
  const { coachId, athletes, secondAdult } = proposed;
  const refusals: TimeRefusal[] = [];
  if (isTaken(known.busy, `coach:${coachId}`, span)) refusals.push({ reason: "coach_taken", coachId });
  for (const { id } of athletes) {
    if (isTaken(known.busy, `athlete:${id}`, span)) refusals.push({ reason: "athlete_taken", athleteId: id });
  }
  const missing = secondAdultMissing({ coachId, athletes, day, secondAdult });
  if (missing !== null) refusals.push(missing);
  if (secondAdult?.kind === "staff" && secondAdult.personId !== coachId) {
    const { personId } = secondAdult;
    if (isTaken(known.busy, `coach:${personId}`, span))
      refusals.push({ reason: "second_adult_taken", personId });
  }
  return refusals;
}

function laneRefusals(proposed: ProposedSession, known: TimeKnowledge, span: Span): TimeRefusal[] {
  const { laneId, siteId, kind } = proposed;
  const free = freeLaneIds(known, siteId, kind, span);
  if (free.includes(laneId)) return [];
  const isSuited = suitedLanes(known.lanes, siteId, kind).some(({ id }) => id === laneId);
  return [{ reason: isSuited ? "lane_taken" : "no_lane", laneId, freeLaneIds: free }];
}

function armRefusals(
  proposed: ProposedSession,
  known: TimeKnowledge,
  day: string,
  dryWorkFits: boolean,
): TimeRefusal[] {
  const room = sessionRoom(proposed.kind, proposed.athletes, day, known.roomOn);
  if ("reason" in room) return [{ ...room, dryWorkFits }];
  if (room.status !== "at_most" || room.holdsPlanned) return [];
  return [{ reason: "too_many_pitches", athleteId: room.athleteId, atMost: room.atMost }];
}

function freeLaneIds(known: AcademyTime, siteId: string, kind: SessionKind, span: Span): string[] {
  return suitedLanes(known.lanes, siteId, kind)
    .filter(({ id }) => !isTaken(known.busy, `lane:${id}`, span))
    .map(({ id }) => id);
}
