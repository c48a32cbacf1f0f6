import type { ExampleInput } from "./example-input";
import { ACADEMY_INPUTS } from "./inputs-academy";
import { ROUND_INPUTS } from "./inputs-rounds";
import { SESSION_INPUTS } from "./inputs-sessions";

/** Procedure path -> an example input; the walks over all procedures fail for any path that is missing. */
export const PROCEDURE_INPUTS: Record<string, ExampleInput> = {
  ...ACADEMY_INPUTS,
  ...ROUND_INPUTS,
  ...SESSION_INPUTS,
};
