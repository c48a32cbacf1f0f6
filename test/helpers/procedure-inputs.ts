import type { TestAcademy } from "./academy";
import type { AthleteRecord } from "./athlete-record";
import { ACADEMY_INPUTS } from "./inputs-academy";
import { ROUND_INPUTS } from "./inputs-rounds";
import { SESSION_INPUTS } from "./inputs-sessions";

/** An input that a procedure takes, about the athlete of a record of the busy academy. */
export type ExampleInput = (record: AthleteRecord, academy: TestAcademy) => unknown;

/** Procedure path -> an example input; the walks over all procedures fail for any path that is missing. */
export const PROCEDURE_INPUTS: Record<string, ExampleInput> = {
  ...ACADEMY_INPUTS,
  ...ROUND_INPUTS,
  ...SESSION_INPUTS,
};
