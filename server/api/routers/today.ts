import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { dayFor, dayView } from "../day-view";
import { homeFor, homeView } from "../home-view";
import { query } from "../procedures";
import { router } from "../trpc";

export const todayRouter = router({
  /** For staff: the day's sessions, what is owed, and the arms that are coming. */
  staff: query({
    action: "calendar.staffView",
    input: z.strictObject({}),
    output: dayView,
    run: (scope) => dayFor(scope),
  }),

  /** For a family: what is worked on, when they come in, what the book leaves the arm today. */
  family: query({
    action: "athlete.view",
    input: z.strictObject({ athleteId: z.string().min(1).max(60) }),
    output: homeView,
    athlete: (db, input) => athleteScope(db, input.athleteId),
    run: (scope) => homeFor(scope),
  }),
});
