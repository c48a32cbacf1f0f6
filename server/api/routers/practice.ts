import { z } from "zod";
import { correctionScope, correctionsOf, tickDay, untickDay } from "@/server/data/corrections";
import { Refusal } from "@/server/domain/errors/refusal";
import { practiceProblem } from "@/server/domain/reviews/practice";
import { dayOf, isCalendarDay } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";
import { DONE, done } from "../done";
import { command } from "../procedures";
import { router } from "../trpc";

const dayOfCorrection = z.strictObject({
  correctionId: z.string().min(1).max(64),
  day: z.string().refine(isCalendarDay, "a day that exists, written YYYY-MM-DD"),
});

async function refuseOtherDays({ db, athlete, today }: Scope, input: z.output<typeof dayOfCorrection>) {
  const record = (await correctionsOf(db, athlete.athleteId)).find((each) => each.id === input.correctionId);
  if (!record) throw new Refusal({ reason: "not_found" });
  const { state } = record.standing;
  const givenOn = dayOf(record.givenAtMs, athlete.zone);
  const why = practiceProblem(input.day, { givenOn, state, today });
  if (why !== null) throw new Refusal({ reason: "practice_day_invalid", why });
}

export const practiceRouter = router({
  /** Ticks a day on which a correction's drill was practised; ticking it again changes nothing. */
  tick: command({
    action: "practice.tick",
    input: dayOfCorrection,
    output: done,
    athlete: (db, { correctionId }) => correctionScope(db, correctionId),
    async run(scope, input) {
      await refuseOtherDays(scope, input);
      const { correctionId, day: practisedOn } = input;
      await tickDay(scope.db, { correctionId, practisedOn, tickedByPersonId: scope.actor.personId });
      return DONE;
    },
  }),

  /** Takes a tick back. */
  untick: command({
    action: "practice.tick",
    input: dayOfCorrection,
    output: done,
    athlete: (db, { correctionId }) => correctionScope(db, correctionId),
    async run(scope, input) {
      await refuseOtherDays(scope, input);
      await untickDay(scope.db, input.correctionId, input.day);
      return DONE;
    },
  }),
});
