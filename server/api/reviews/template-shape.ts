import { z } from "zod";
import { reviewTemplateSchema } from "@/server/domain/reviews/review-template";

/** A template as a screen shows it. */
export const templateShape = z.strictObject({
  id: z.string(),
  ...reviewTemplateSchema.shape,
  active: z.boolean(),
  version: z.number(),
});
/** A template as a screen shows it. */
export type TemplateView = z.output<typeof templateShape>;
