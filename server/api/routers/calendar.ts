import { z } from "zod";
import { placeNames } from "@/server/data/academy-time";
import { athleteNames } from "@/server/data/booking-people";
import { calendarDay } from "@/server/domain/people/athlete-record";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayBoard, readDayBoard } from "../calendar/day-board";
import { readWeekBoard, weekBoard } from "../calendar/week-board";
import { query } from "../procedures";
import { router } from "../trpc";

const place = z.strictObject({ day: calendarDay.nullable(), siteId: z.string().max(60).nullable() });

export const calendarRouter = router({
  /** A day by lane, a board for each site. */
  day: query({ action: "calendar.staffView", input: place, output: dayBoard, run: readDayBoard }),

  /** A week by coach. */
  week: query({ action: "calendar.staffView", input: place, output: weekBoard, run: readWeekBoard }),

  /** Whom a time can be found for, by name. */
  whom: query({
    action: "calendar.staffView",
    input: z.strictObject({}),
    output: z.strictObject({
      today: z.string(),
      athletes: z.array(z.strictObject({ athleteId: z.string(), name: z.string(), isOwn: z.boolean() })),
    }),
    async run({ db, actor, nowMs }) {
      const { sites } = await placeNames(db);
      const today = dayOf(nowMs, sites[0]?.zone ?? "UTC");
      const athletes = (await athleteNames(db, today)).map(({ coachPersonId, ...one }) => ({
        ...one,
        isOwn: coachPersonId === actor.personId,
      }));
      return { today, athletes };
    },
  }),
});
