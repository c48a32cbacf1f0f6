import { z } from "zod";
import { DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { idInput } from "../reviews/shapes";

const named = z.strictObject({ id: z.string(), name: z.string() });

const times = z.strictObject({
  watched: z.int(),
  held: z.int(),
  open: z.int(),
  cameBack: z.int(),
  medianDays: z.int().nullable(),
  lowerDays: z.int().nullable(),
  upperDays: z.int().nullable(),
  words: z.string(),
});

const group = times.extend({ key: z.string(), name: z.string() });

const share = z.number().min(0).max(1);

/** Which corrections are asked for; null for all. */
export const holdingChoice = z.strictObject({
  phase: z.enum(DELIVERY_PHASES).nullable(),
  checkpointId: idInput.nullable(),
  coachId: idInput.nullable(),
});

/** The academy's ledger of corrections, and what can be chosen in it. */
export const holdingLedgerShape = z.strictObject({
  /** What corrections on record offer to choose from. */
  choices: z.strictObject({
    phases: z.array(z.enum(DELIVERY_PHASES)),
    checkpoints: z.array(named),
    coaches: z.array(named),
  }),
  /** Corrections on record in all, chosen or not. */
  onRecord: z.int(),
  all: times,
  longestDays: z.int(),
  steps: z.array(
    z.strictObject({
      ...{ days: z.int(), atRisk: z.int(), heldThen: z.int(), share },
      ...{ lower: share.nullable(), upper: share.nullable() },
    }),
  ),
  readings: z.array(z.strictObject({ days: z.int(), share })),
  byCheckpoint: z.array(group),
  byCoach: z.array(group),
  drills: z.array(
    z.strictObject({
      ...{ checkpointId: z.string(), checkpointName: z.string(), drill: z.string() },
      ...{ withIt: times, withoutIt: times, isFaster: z.boolean(), words: z.string() },
    }),
  ),
});

/** {@link holdingLedgerShape} as it is read. */
export type HoldingLedgerView = z.infer<typeof holdingLedgerShape>;
