import type { Answers } from "@/components/wire/answers";
import { SEARCH_DAYS } from "@/server/domain/calendar/follow-up";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { addDays } from "@/server/domain/time/calendar-day";
import type { TimeSearch } from "./time-search";

type Planning = Answers["sessions"]["planning"];
type Moved = Pick<Answers["sessions"]["forFamily"], "head" | "plannedPitches">;

/** What is looked for when nothing is said: the follow-up of a settled round where one is due, else a lesson. */
export function defaultSearch(planning: Planning, roundId: string | null): TimeSearch {
  const { today, followUp, athletes } = planning;
  const isDue = followUp !== null && (roundId !== null || !(followUp.isFollowedUp || followUp.isLate));
  const kind = athletes.length > 2 ? "group" : "lesson";
  const { durationMin, plannedPitches } = SESSION_KIND[kind];
  return {
    ...{ kind, durationMin, plannedPitches },
    athleteIds: athletes.map((one) => one.athleteId),
    fromDay: today,
    toDay: isDue ? followUp.toDay : addDays(today, SEARCH_DAYS - 1),
    ...{ coachPersonId: null, siteId: null, weekdays: [], dayPart: "any" },
    roundId: isDue ? followUp.roundId : null,
    moveSessionId: null,
  };
}

/** What is looked for when a session is to be moved: the same again, at another time. */
export function searchToMove(defaults: TimeSearch, { head, plannedPitches }: Moved): TimeSearch {
  return {
    ...defaults,
    kind: head.kind,
    durationMin: Math.round((head.endsAtMs - head.startsAtMs) / 60_000),
    plannedPitches,
    coachPersonId: head.coachPersonId,
    roundId: null,
    moveSessionId: head.id,
  };
}
