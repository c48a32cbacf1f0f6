import { z } from "zod";
import type { Db } from "@/db/client";
import { rolesOf } from "@/server/data/accounts-of-people";
import { deleteAbsence, insertAbsence, listCoachWeeks, saveCoachWeek } from "@/server/data/coach-hours";
import { findSite } from "@/server/data/sites";
import { sessionsOfCoach } from "@/server/data/work-ahead";
import { Refusal } from "@/server/domain/errors/refusal";
import { calendarDay } from "@/server/domain/people/athlete-record";
import { addDays, instantOf } from "@/server/domain/time/calendar-day";
import { weekProblem } from "@/server/domain/time/week-problem";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const minute = z.int().min(0).max(1440);
const span = z.strictObject({
  siteId: id,
  weekday: z.int().min(1).max(7),
  startsMin: minute,
  endsMin: minute,
});

export const hoursRouter = router({
  /** Every coach with their week and the absences that are not over. */
  list: query({
    action: "academy.staffView",
    input: z.strictObject({}),
    output: z.array(
      z.strictObject({
        personId: id,
        givenName: z.string(),
        familyName: z.string(),
        week: z.array(span),
        absences: z.array(z.strictObject({ absenceId: id, startsAtMs: z.number(), endsAtMs: z.number() })),
      }),
    ),
    run: ({ db, nowMs }) => listCoachWeeks(db, nowMs),
  }),

  /** Replaces a coach's weekly hours; a coach is at one site at a time. */
  setWeek: command({
    action: "academy.edit",
    input: z.strictObject({ coachPersonId: id, week: z.array(span).max(42) }),
    output: done,
    async run(scope, { coachPersonId, week }) {
      await mustCoach(scope.db, coachPersonId);
      for (const siteId of new Set(week.map((each) => each.siteId))) await zoneOf(scope.db, siteId);
      const why = weekProblem(week);
      if (why) throw new Refusal({ reason: "hours_invalid", why });
      await saveCoachWeek(scope.db, coachPersonId, week);
      await noteAct(scope, "coach.hours", coachPersonId, { spans: week.length });
      return DONE;
    },
  }),

  /** Writes down whole days a coach is away, by the clock of a site; says how many of their sessions are booked then. */
  addAbsence: command({
    action: "academy.edit",
    input: z.strictObject({ coachPersonId: id, siteId: id, firstDay: calendarDay, lastDay: calendarDay }),
    output: z.strictObject({ bookedSessions: z.number() }),
    async run(scope, { coachPersonId, siteId, firstDay, lastDay }) {
      await mustCoach(scope.db, coachPersonId);
      const zone = await zoneOf(scope.db, siteId);
      if (lastDay < firstDay || lastDay > addDays(firstDay, 365)) {
        const why = "An absence ends on or after its first day, and within a year.";
        throw new Refusal({ reason: "hours_invalid", why });
      }
      const away = { startMs: instantOf(firstDay, 0, zone), endMs: instantOf(lastDay, 1440, zone) };
      await insertAbsence(scope.db, coachPersonId, away);
      await noteAct(scope, "coach.away", coachPersonId, { firstDay, lastDay });
      return { bookedSessions: await sessionsOfCoach(scope.db, coachPersonId, away) };
    },
  }),

  /** Takes an absence back. */
  removeAbsence: command({
    action: "academy.edit",
    input: z.strictObject({ absenceId: id }),
    output: done,
    async run(scope, { absenceId }) {
      if (!(await deleteAbsence(scope.db, absenceId))) throw new Refusal({ reason: "not_found" });
      await noteAct(scope, "coach.back", absenceId);
      return DONE;
    },
  }),
});

async function mustCoach(db: Db, personId: string): Promise<void> {
  if (!(await rolesOf(db, personId)).includes("coach")) throw new Refusal({ reason: "not_found" });
}

async function zoneOf(db: Db, siteId: string): Promise<string> {
  const site = await findSite(db, siteId);
  if (!site) throw new Refusal({ reason: "not_found" });
  return site.zone;
}
