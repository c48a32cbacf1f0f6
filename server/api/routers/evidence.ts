import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { checkpointFor } from "../evidence/checkpoint-evidence";
import { checkpointEvidence } from "../evidence/checkpoint-shape";
import { holdingChoice, holdingLedgerShape } from "../evidence/holding-shape";
import { holdingFor } from "../evidence/holding-view";
import { query } from "../procedures";
import { idInput } from "../reviews/shapes";
import { router } from "../trpc";

export const evidenceRouter = router({
  /** Everything on record of an athlete at one checkpoint, and what it carries. For staff. */
  checkpoint: query({
    action: "evidence.view",
    input: z.strictObject({ athleteId: idInput, checkpointId: idInput }),
    output: checkpointEvidence,
    athlete: (db, { athleteId }) => athleteScope(db, athleteId),
    run: (scope, { checkpointId }) => checkpointFor(scope, checkpointId),
  }),

  /** How long corrections take to hold, over all athletes: by checkpoint, by coach, and beside which drills. */
  holding: query({
    action: "academy.staffView",
    input: holdingChoice,
    output: holdingLedgerShape,
    run: holdingFor,
  }),
});
