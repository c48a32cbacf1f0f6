import type { Db } from "@/db/client";
import { reviewTemplate } from "@/db/schema/reviews";
import type { ReviewTemplate } from "@/server/domain/reviews/review-template";

/** What the test academy usually says of a child's first clip: a keep, a correction. */
export const OWN_TEMPLATE: ReviewTemplate = {
  name: "First look, 9 to 13",
  fromAge: 9,
  toAge: 13,
  lines: [
    { kind: "keep", checkpointId: "gaze-on-plate", words: "Your eyes stay on the mitt.", drill: "" },
    { kind: "correction", checkpointId: "hips-lead", words: "Hip first", drill: "Hip bumps" },
  ],
};

/** Keeps it as `tpl_own`, version 1. */
export async function keepOwnTemplate(db: Db): Promise<void> {
  const { lines, ...template } = OWN_TEMPLATE;
  await db.insert(reviewTemplate).values({ id: "tpl_own", ...template, lines: JSON.stringify(lines) });
}
