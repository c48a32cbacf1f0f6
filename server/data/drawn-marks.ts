import { asc, eq, inArray, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { drawnMark } from "@/db/schema/mechanics";
import { remark } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import type { DraftMark, Place } from "@/server/domain/reviews/draft";
import { newId } from "./new-id";
import { keepRemark } from "./remarks";

/** Keeps the marks of a review as they were drawn; the words of a note apart, so that they can be erased. */
export async function keepMarks(tx: Db, reviewId: string, marks: readonly DraftMark[]): Promise<void> {
  for (const [position, { text, points, ...mark }] of marks.entries()) {
    const remarkId = await keepRemark(tx, text);
    await tx
      .insert(drawnMark)
      .values({ ...mark, id: newId("mrk"), reviewId, points: JSON.stringify(points), remarkId, position });
  }
}

/** The marks of sent reviews and checks on some clips, in the order drawn. A note whose words were erased is empty. */
export async function marksOn(db: Db, clipIds: readonly string[]): Promise<DraftMark[]> {
  const rows = await db
    .select({ mark: drawnMark, text: remark.text })
    .from(drawnMark)
    .innerJoin(review, eq(review.id, drawnMark.reviewId))
    .leftJoin(remark, eq(remark.id, drawnMark.remarkId))
    .where(inArray(drawnMark.clipId, [...clipIds]))
    .orderBy(asc(review.sentAtMs), sql`"review".rowid`, asc(drawnMark.position));
  return rows.map(({ mark: { reviewId, remarkId, position, ...mark }, text }) => ({
    ...mark,
    points: JSON.parse(mark.points) as Place[],
    text: text ?? "",
  }));
}
