import { z } from "zod";

/** The answer of a command that has nothing more to say. */
export const done = z.strictObject({ done: z.literal(true) });

/** The value of {@link done}. */
export const DONE = { done: true } as const;
