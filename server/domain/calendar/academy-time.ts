import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { type Interval, type OpenHours, openingsOn, type WeeklyHours } from "@/server/domain/time/open-hours";
import type { Claim, ClaimResource } from "./claims";
import { common, merged, without } from "./intervals";
import type { LaneKind, SessionKind } from "./session-kind";
import { SESSION_KIND } from "./session-kind";

/** A site and when it is open, by its own wall clock. */
export interface SiteHours {
  id: string;
  hours: OpenHours;
}

/** A lane at a site. */
export interface Lane {
  id: string;
  siteId: string;
  kind: LaneKind;
}

/** When a coach works: a week at each site by that site's wall clock, less the absences. */
export interface CoachHours {
  id: string;
  hours: readonly { siteId: string; week: readonly WeeklyHours[] }[];
  absences: readonly Interval[];
}

/**
 * The academy as far as finding a time goes. `busy` holds every claim that overlaps the span asked about, without
 * those of a session that is being moved.
 */
export interface AcademyTime {
  sites: readonly SiteHours[];
  lanes: readonly Lane[];
  coaches: readonly CoachHours[];
  busy: readonly Claim[];
}

/** When the site is open, around `[fromMs, toMs)`; an opening up to midnight and the next from midnight are one. */
export function siteOpen(site: SiteHours, fromMs: number, toMs: number): Interval[] {
  return openAround(site.hours, fromMs, toMs);
}

/** When the coach works at the site, around `[fromMs, toMs)`; the site itself may be closed then. */
export function coachWorks(coach: CoachHours, site: SiteHours, fromMs: number, toMs: number): Interval[] {
  const week = coach.hours.filter((place) => place.siteId === site.id).flatMap((place) => place.week);
  const hours: OpenHours = { zone: site.hours.zone, week, closedOn: new Set<CalendarDay>() };
  return without(openAround(hours, fromMs, toMs), coach.absences);
}

/** When the site is open, the coach there, and neither the coach nor any of the athletes taken. */
export function freeTogether(
  academy: AcademyTime,
  place: { coach: CoachHours; site: SiteHours; athleteIds: readonly string[] },
  fromMs: number,
  toMs: number,
): Interval[] {
  const { coach, site } = place;
  const open = common(siteOpen(site, fromMs, toMs), coachWorks(coach, site, fromMs, toMs));
  const taken = [`coach:${coach.id}` as const, ...place.athleteIds.map((id) => `athlete:${id}` as const)];
  return without(
    open,
    taken.flatMap((resource) => takenSpans(academy.busy, resource)),
  );
}

/** The spans in which a resource is claimed. */
export function takenSpans(busy: readonly Claim[], resource: ClaimResource): Interval[] {
  return merged(
    busy
      .filter((claim) => claim.resource === resource)
      .map((claim) => ({ startMs: claim.startsAtMs, endMs: claim.endsAtMs })),
  );
}

/** The lanes of a site that a kind of session fits, the kind of lane it should take first in front. */
export function suitedLanes(lanes: readonly Lane[], siteId: string, kind: SessionKind): Lane[] {
  return SESSION_KIND[kind].laneKinds.flatMap((laneKind) =>
    lanes.filter((lane) => lane.siteId === siteId && lane.kind === laneKind),
  );
}

function openAround(hours: OpenHours, fromMs: number, toMs: number): Interval[] {
  const openings: Interval[] = [];
  const lastDay = addDays(dayOf(toMs, hours.zone), 1);
  for (let day = addDays(dayOf(fromMs, hours.zone), -1); day <= lastDay; day = addDays(day, 1)) {
    openings.push(...openingsOn(hours, day));
  }
  return merged(openings);
}
