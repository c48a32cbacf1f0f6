import type { RefusalDetail } from "@/server/domain/errors/refusal";
import { whyInSentences } from "@/server/domain/throwing/why";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { ArmAnswers } from "./arm-answers";
import type { TimeRefusal } from "./check-time";

/** What the sentence of a refused time needs beside the refusal. */
export interface RefusedAbout {
  /** The day of the session by the site's calendar. */
  day: CalendarDay;
  noticeMin: number;
  answers: ArmAnswers;
}

/**
 * A time's refusal as the person reads it. Pain is told apart from rest, because nothing but a clearance ends it. The
 * why of a resting arm leaves out the free day: the refusal's own sentence says it.
 */
export function timeRefusalDetail(refusal: TimeRefusal, about: RefusedAbout): RefusalDetail {
  const { day, noticeMin } = about;
  switch (refusal.reason) {
    case "too_soon_notice":
      return { reason: "too_soon", noticeMin };
    case "site_closed":
      return { reason: "site_closed", day };
    case "outside_coach_hours":
    case "no_lane":
    case "second_adult_missing":
      return { reason: refusal.reason };
    case "coach_taken":
      return { reason: "time_taken", what: "coach" };
    case "lane_taken":
      return { reason: "time_taken", what: "lane" };
    case "athlete_taken":
      return { reason: "time_taken", what: "athlete" };
    case "second_adult_taken":
      return { reason: "time_taken", what: "second_adult" };
    case "arm_resting":
      return armDetail(refusal, about);
    case "too_many_pitches":
      return {
        reason: "too_many_pitches",
        atMost: refusal.atMost,
        why: whyInSentences(about.answers.on(refusal.athleteId, day)).join(" "),
      };
  }
}

function armDetail(
  refusal: Extract<TimeRefusal, { reason: "arm_resting" }>,
  { day, answers }: RefusedAbout,
): RefusalDetail {
  const answer = answers.on(refusal.athleteId, day);
  const pain = answer.reasons.find((reason) => reason.kind === "pain");
  if (pain) return { reason: "pain_stop", since: pain.feltOn };
  const { firstFreeDay, dryWorkFits } = refusal;
  const why = whyInSentences({ ...answer, firstFreeDay: null }).join(" ");
  return { reason: "arm_resting", firstFreeDay, why, dryWorkFits };
}
