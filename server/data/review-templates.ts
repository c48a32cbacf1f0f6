import { and, asc, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { reviewTemplate } from "@/db/schema/reviews";
import type { ReviewTemplate, TemplateLine } from "@/server/domain/reviews/review-template";
import { newId } from "./new-id";

/** A template as it is kept, with the version that a change must name. */
export interface KeptTemplate extends ReviewTemplate {
  id: string;
  /** False when it is put aside. */
  active: boolean;
  version: number;
}

/** Every template, those put aside included, the youngest age first. */
export async function listTemplates(db: Db): Promise<KeptTemplate[]> {
  const rows = await db
    .select()
    .from(reviewTemplate)
    .orderBy(asc(reviewTemplate.fromAge), asc(reviewTemplate.toAge), reviewTemplate.name, reviewTemplate.id);
  return rows.map(({ lines, ...row }) => ({ ...row, lines: JSON.parse(lines) as TemplateLine[] }));
}

/** A template by its id, or null. */
export async function findTemplate(db: Db, id: string): Promise<KeptTemplate | null> {
  return (await listTemplates(db)).find((each) => each.id === id) ?? null;
}

/** Adds a template. @returns its id */
export async function insertTemplate(tx: Db, template: ReviewTemplate): Promise<string> {
  const id = newId("tpl");
  await tx.insert(reviewTemplate).values({ id, ...asRow(template) });
  return id;
}

/**
 * Saves a template over the version it was read at.
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveTemplate(
  tx: Db,
  { id, active, version, ...template }: KeptTemplate,
): Promise<boolean> {
  const saved = await tx
    .update(reviewTemplate)
    .set({ ...asRow(template), active, version: version + 1 })
    .where(and(eq(reviewTemplate.id, id), eq(reviewTemplate.version, version)))
    .returning({ id: reviewTemplate.id });
  return saved.length === 1;
}

const asRow = ({ name, fromAge, toAge, lines }: ReviewTemplate) => ({
  ...{ name, fromAge, toAge },
  lines: JSON.stringify(lines),
});
