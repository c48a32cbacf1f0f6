import { z } from "zod";
import type { Db } from "@/db/client";
import {
  deleteClosure,
  findLane,
  findSite,
  insertClosure,
  insertLane,
  insertSite,
  listSites,
  retireLane,
  retireSite,
  type SiteDetails,
  saveSite,
  saveWeek,
} from "@/server/data/sites";
import { athletesAtHome, sessionsAheadOnLane, sessionsAtSite } from "@/server/data/work-ahead";
import { LANE_KINDS } from "@/server/domain/calendar/session-kind";
import { Refusal } from "@/server/domain/errors/refusal";
import { calendarDay } from "@/server/domain/people/athlete-record";
import { placeName, timeZone } from "@/server/domain/people/starting-academy";
import { addDays, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { weekProblem } from "@/server/domain/time/week-problem";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const minute = z.int().min(0).max(1440);
const opening = z.strictObject({ weekday: z.int().min(1).max(7), opensMin: minute, closesMin: minute });
const details = z.strictObject({ name: placeName, zone: timeZone, address: z.string().trim().max(200) });
const laneKind = z.enum(LANE_KINDS);

export const sitesRouter = router({
  /** Every site with its week, its closed days from yesterday on, and its lanes. */
  list: query({
    action: "academy.staffView",
    input: z.strictObject({}),
    output: z.array(
      details.extend({
        siteId: id,
        isRetired: z.boolean(),
        week: z.array(opening),
        closures: z.array(z.strictObject({ closureId: id, closedOn: calendarDay, reason: z.string() })),
        lanes: z.array(
          z.strictObject({ laneId: id, name: z.string(), kind: laneKind, isRetired: z.boolean() }),
        ),
      }),
    ),
    run: ({ db, nowMs }) => listSites(db, addDays(dayOf(nowMs, "UTC"), -1)),
  }),

  /** Adds a site; its hours and lanes come next. */
  add: command({
    action: "academy.edit",
    input: details,
    output: z.strictObject({ siteId: id }),
    async run(scope, input) {
      const siteId = await insertSite(scope.db, input);
      await noteAct(scope, "site.added", siteId, { zone: input.zone });
      return { siteId };
    },
  }),

  /** Changes a site's name, address and zone; the zone only while nothing is booked there by its clock. */
  edit: command({
    action: "academy.edit",
    input: details.extend({ siteId: id }),
    output: done,
    async run(scope, { siteId, ...changed }) {
      const before = await liveSite(scope.db, siteId);
      const booked = before.zone === changed.zone ? 0 : await sessionsAhead(scope, siteId);
      if (booked > 0) {
        const why = `${booked} sessions are booked at ${before.name} by its present clock, so the zone cannot change.`;
        throw new Refusal({ reason: "settings_invalid", why });
      }
      await saveSite(scope.db, siteId, changed);
      await noteAct(scope, "site.edited", siteId, { zone: changed.zone });
      return DONE;
    },
  }),

  /** Retires a site that nobody trains at any more. */
  retire: command({
    action: "academy.edit",
    input: z.strictObject({ siteId: id }),
    output: done,
    async run(scope, { siteId }) {
      const { name, zone } = await liveSite(scope.db, siteId);
      const athletes = await athletesAtHome(scope.db, siteId, dayOf(scope.nowMs, zone));
      const isInUse = athletes > 0 || (await sessionsAhead(scope, siteId)) > 0;
      if (isInUse) throw new Refusal({ reason: "in_use", what: name });
      await retireSite(scope.db, siteId, scope.nowMs);
      await noteAct(scope, "site.retired", siteId);
      return DONE;
    },
  }),

  /** Replaces the weekly opening hours. Promises already given keep their due time. */
  setWeek: command({
    action: "academy.edit",
    input: z.strictObject({ siteId: id, week: z.array(opening).max(28) }),
    output: done,
    async run(scope, { siteId, week }) {
      await liveSite(scope.db, siteId);
      const why = weekProblem(
        week.map(({ weekday, opensMin, closesMin }) => ({
          weekday,
          startsMin: opensMin,
          endsMin: closesMin,
        })),
      );
      if (why) throw new Refusal({ reason: "hours_invalid", why });
      await saveWeek(scope.db, siteId, week);
      await noteAct(scope, "site.hours", siteId, { openings: week.length });
      return DONE;
    },
  }),

  /** Closes a site for a day; says how many sessions are booked there that day, which stay booked. */
  close: command({
    action: "academy.edit",
    input: z.strictObject({
      siteId: id,
      closedOn: calendarDay,
      reason: z.string().trim().min(1, "Enter a reason.").max(80),
    }),
    output: z.strictObject({ bookedSessions: z.number() }),
    async run(scope, { siteId, closedOn, reason }) {
      const { zone } = await liveSite(scope.db, siteId);
      await insertClosure(scope.db, siteId, { closedOn, reason });
      await noteAct(scope, "site.closed", siteId, { closedOn });
      const startMs = instantOf(closedOn, 0, zone);
      const span = { startMs, endMs: instantOf(closedOn, 1440, zone) };
      return { bookedSessions: await sessionsAtSite(scope.db, siteId, span) };
    },
  }),

  /** Opens a closed day again. */
  reopen: command({
    action: "academy.edit",
    input: z.strictObject({ closureId: id }),
    output: done,
    async run(scope, { closureId }) {
      if (!(await deleteClosure(scope.db, closureId))) throw new Refusal({ reason: "not_found" });
      await noteAct(scope, "site.reopened", closureId);
      return DONE;
    },
  }),

  /** Adds a lane to a site. */
  addLane: command({
    action: "academy.edit",
    input: z.strictObject({ siteId: id, name: placeName, kind: laneKind }),
    output: z.strictObject({ laneId: id }),
    async run(scope, { siteId, ...lane }) {
      await liveSite(scope.db, siteId);
      const laneId = await insertLane(scope.db, siteId, lane);
      await noteAct(scope, "lane.added", laneId, { siteId, kind: lane.kind });
      return { laneId };
    },
  }),

  /** Retires a lane that nothing is booked on. */
  retireLane: command({
    action: "academy.edit",
    input: z.strictObject({ laneId: id }),
    output: done,
    async run(scope, { laneId }) {
      const lane = await findLane(scope.db, laneId);
      if (!lane) throw new Refusal({ reason: "not_found" });
      if ((await sessionsAheadOnLane(scope.db, laneId, scope.nowMs)) > 0) {
        throw new Refusal({ reason: "in_use", what: lane.name });
      }
      await retireLane(scope.db, laneId, scope.nowMs);
      await noteAct(scope, "lane.retired", laneId);
      return DONE;
    },
  }),
});

async function liveSite(db: Db, siteId: string): Promise<SiteDetails> {
  const found = await findSite(db, siteId);
  if (!found) throw new Refusal({ reason: "not_found" });
  return found;
}

function sessionsAhead(scope: { db: Db; nowMs: number }, siteId: string): Promise<number> {
  return sessionsAtSite(scope.db, siteId, { startMs: scope.nowMs, endMs: Number.MAX_SAFE_INTEGER });
}
