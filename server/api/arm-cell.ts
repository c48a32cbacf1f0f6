import { armOf } from "@/server/data/arms";
import { painRecord } from "@/server/data/pain";
import { Refusal } from "@/server/domain/errors/refusal";
import { boardDaysAround } from "@/server/domain/throwing/board-row";
import { painOnDay, painSpans } from "@/server/domain/throwing/pain-span";
import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { type ArmAnswer, answerFor } from "./arm-answer";
import type { Scope } from "./context";

/**
 * The answer about one arm on one day of the board, as it is known now, with the sentences behind it.
 * @throws Refusal `not_found` for a day that no board of today shows: for such a one the log is not read far enough
 */
export async function armCellFor({ db, nowMs, athlete, today }: Scope, day: CalendarDay): Promise<ArmAnswer> {
  if (!isOnABoard(day, today)) throw new Refusal({ reason: "not_found" });
  const arm = await armOf(db, athlete.athleteId, nowMs);
  const spans = painSpans(await painRecord(db, athlete.athleteId), (atMs) => dayOf(atMs, athlete.zone));
  const pain = painOnDay(spans, day);
  const answer = answerFor({ ...arm, day, pain: pain?.stop ?? null });
  if (!pain?.clearedOn) return answer;
  return { ...answer, why: [...answer.why, `Cleared on ${dayInWords(pain.clearedOn)}.`] };
}

/** A board begins by the calendar of one site: an athlete of another may be a day apart. */
function isOnABoard(day: CalendarDay, today: CalendarDay): boolean {
  const days = boardDaysAround(today);
  return day >= addDays(days.at(0) ?? today, -1) && day <= addDays(days.at(-1) ?? today, 1);
}
