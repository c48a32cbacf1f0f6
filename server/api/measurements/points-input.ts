import { z } from "zod";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { DRAFT_LIMITS, placeSchema } from "@/server/domain/reviews/draft";

/** As many points as some kind asks for; whether they are as many as this one does is told in words. */
const COUNTS = new Set(Object.values(MEASURES).map(({ points }) => points.length));

/** Points placed blind, in the order asked for, and where a held finish ends. */
export const placedInput = {
  points: z
    .array(placeSchema)
    .max(Math.max(...COUNTS))
    .refine((points) => COUNTS.has(points.length)),
  untilFrame: z.int().min(0).max(DRAFT_LIMITS.frame).nullable(),
};
