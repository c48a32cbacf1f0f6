import { z } from "zod";
import { repeatedMeasures } from "@/server/data/measurements";
import {
  askRemeasure,
  findRemeasure,
  finishRemeasure,
  latestMeasurements,
  measurementScope,
  remeasureScope,
  waitingRemeasures,
} from "@/server/data/remeasure";
import { coachesNow } from "@/server/data/round-queue";
import { Refusal } from "@/server/domain/errors/refusal";
import { mayWithdraw } from "@/server/domain/mechanics/measure-again";
import { measureErrors } from "@/server/domain/mechanics/measure-error";
import { DONE, done } from "../done";
import { loadBlind, measureAgain } from "../measurements/measure-again";
import { placedInput } from "../measurements/points-input";
import { againShape, answeredShape, blindShape } from "../measurements/shapes";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { idInput } from "../reviews/shapes";
import { router } from "../trpc";

const requestInput = z.strictObject({ requestId: idInput });

export const measurementsRouter = router({
  /** What waits to be measured a second time, what could be, and how sure measures are. For staff. */
  again: query({
    action: "queue.view",
    input: z.strictObject({}),
    output: againShape,
    run: async ({ db, actor }) => ({
      isCoach: actor.roles.includes("coach"),
      waiting: await waitingRemeasures(db, actor),
      latest: await latestMeasurements(db),
      coaches: await coachesNow(db),
      measureErrors: measureErrors(await repeatedMeasures(db)),
    }),
  }),

  /** Asks for a second measure of a sent one: of a coach, or of whoever comes first. */
  askAgain: command({
    action: "review.write",
    input: z.strictObject({ measurementId: idInput, forPersonId: idInput.nullable() }),
    output: done,
    athlete: (db, { measurementId }) => measurementScope(db, measurementId),
    async run({ db, actor, athlete, nowMs }, asked) {
      const coaches = await coachesNow(db);
      const isCoach = coaches.some(({ personId }) => personId === asked.forPersonId);
      if (asked.forPersonId !== null && !isCoach) throw new Refusal({ reason: "not_found" });
      const asking = { athleteId: athlete.athleteId, askedByPersonId: actor.personId, askedAtMs: nowMs };
      await askRemeasure(db, { ...asked, ...asking });
      return DONE;
    },
  }),

  /** Takes a request back: who asked for it, or an admin. What was measured before stays. */
  withdraw: command({
    action: "remeasure.withdraw",
    input: requestInput,
    output: done,
    athlete: (db, { requestId }) => remeasureScope(db, requestId),
    async run(scope, { requestId }) {
      const { db, actor, nowMs } = scope;
      const request = await findRemeasure(db, requestId);
      if (!request || !mayWithdraw(request, actor)) throw new Refusal({ reason: "not_found" });
      const isFirst = await finishRemeasure(db, requestId, { doneAtMs: nowMs, doneMeasurementId: null });
      if (!isFirst) throw new Refusal({ reason: "changed_meanwhile" });
      await noteAct(scope, "remeasure.withdrawn", requestId, { askedByPersonId: request.askedByPersonId });
      return DONE;
    },
  }),

  /** A frame to be measured a second time, without its points and without what they were worth. */
  blind: query({
    action: "review.write",
    input: requestInput,
    output: blindShape,
    athlete: (db, { requestId }) => remeasureScope(db, requestId),
    run: (scope, { requestId }) => loadBlind(scope, requestId),
  }),

  /** Keeps a second measure, and tells both values. */
  measureAgain: command({
    action: "review.write",
    input: requestInput.extend(placedInput),
    output: answeredShape,
    athlete: (db, { requestId }) => remeasureScope(db, requestId),
    run: measureAgain,
  }),
});
