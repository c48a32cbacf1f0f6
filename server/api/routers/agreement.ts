import { z } from "zod";
import { blindItemScope, blindSetScopes, closeBlindSet, findBlindSet } from "@/server/data/blind-sets";
import { Refusal } from "@/server/domain/errors/refusal";
import { drawSet, loadPool } from "../agreement/draw-set";
import { loadNext } from "../agreement/load-next";
import { loadSet, loadSets } from "../agreement/load-sets";
import { rateItem } from "../agreement/rate-item";
import { drawInput, nextShape, poolShape, rateInput, setShape, setsShape } from "../agreement/shapes";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { idInput } from "../reviews/shapes";
import { router } from "../trpc";

const nothing = z.strictObject({});
const setInput = z.strictObject({ setId: idInput });

export const agreementRouter = router({
  /** The blind sets there are, and how far coaches are with them. For staff. */
  sets: query({
    action: "agreement.view",
    input: nothing,
    output: setsShape,
    run: (scope) => loadSets(scope),
  }),

  /** How many frames there are to draw a set from. For admins. */
  pool: query({
    action: "agreement.manage",
    input: nothing,
    output: poolShape,
    run: (scope) => loadPool(scope),
  }),

  /** Draws a set. For admins. */
  draw: command({
    action: "agreement.manage",
    input: drawInput,
    output: z.strictObject({ setId: z.string() }),
    run: drawSet,
  }),

  /** One set: who is how far while it is open, how far coaches agree once it is closed. For staff. */
  set: query({
    action: "agreement.view",
    input: setInput,
    output: setShape,
    run: (scope, { setId }) => loadSet(scope, setId),
  }),

  /** Closes a set: nobody rates any more, and everybody of the staff sees. For admins. */
  close: command({
    action: "agreement.manage",
    input: setInput,
    output: done,
    async run(scope, { setId }) {
      const { db, nowMs } = scope;
      if (!(await findBlindSet(db, setId))) throw new Refusal({ reason: "not_found" });
      if (!(await closeBlindSet(db, setId, nowMs))) throw new Refusal({ reason: "blind_set_closed" });
      await noteAct(scope, "agreement.closed", setId);
      return DONE;
    },
  }),

  /** The frame of a set that a coach rates next, alone. */
  next: query({
    action: "agreement.rate",
    input: setInput,
    output: nextShape,
    athlete: (db, { setId }) => blindSetScopes(db, setId),
    run: (scope, { setId }) => loadNext(scope, setId),
  }),

  /** Keeps what a coach says of one frame, once. */
  rate: command({
    action: "agreement.rate",
    input: rateInput,
    output: done,
    athlete: (db, { itemId }) => blindItemScope(db, itemId),
    async run(scope, said) {
      await rateItem(scope, said);
      return DONE;
    },
  }),
});
