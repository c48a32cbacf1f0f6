import { and, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { person } from "@/db/schema/people";
import { draft } from "@/db/schema/rounds";
import { fullName } from "@/server/domain/people/person";
import {
  type CheckDraft,
  checkDraftSchema,
  type DraftKind,
  type ReviewDraft,
  reviewDraftSchema,
} from "@/server/domain/reviews/draft";

/** What is written in a draft, by its kind. */
export interface DraftDocuments {
  review: ReviewDraft;
  check: CheckDraft;
}

/** A draft as it is kept. Instants in epoch milliseconds. */
export interface KeptDraft<Kind extends DraftKind> {
  document: DraftDocuments[Kind];
  version: number;
  coachName: string;
  openedAtMs: number;
  savedAtMs: number;
}

const SCHEMAS = { review: reviewDraftSchema, check: checkDraftSchema };

/**
 * What is being written on a round, or null when nothing is.
 * @throws ZodError when what is kept is no draft of that kind (a broken record)
 */
export async function findDraft<Kind extends DraftKind>(
  db: Db,
  roundId: string,
  kind: Kind,
): Promise<KeptDraft<Kind> | null> {
  const [row] = await db
    .select({ draft, givenName: person.givenName, familyName: person.familyName })
    .from(draft)
    .innerJoin(person, eq(person.id, draft.coachPersonId))
    .where(and(eq(draft.roundId, roundId), eq(draft.kind, kind)));
  if (!row) return null;
  const { version, openedAtMs, savedAtMs, document } = row.draft;
  const parsed = SCHEMAS[kind].parse(completed(kind, JSON.parse(document))) as DraftDocuments[Kind];
  return { document: parsed, version, coachName: fullName(row), openedAtMs, savedAtMs };
}

/** A draft from before measures, marks and spoken notes has none. */
function completed(kind: DraftKind, document: Record<string, unknown>): Record<string, unknown> {
  const rows = (name: string) => {
    const kept = document[name];
    return Array.isArray(kept) ? { [name]: kept.map((row) => ({ voiceId: null, ...row })) } : {};
  };
  const empty = { measures: [], marks: [], ...(kind === "review" ? { shownAgain: [] } : {}) };
  return {
    ...empty,
    ...document,
    ...(kind === "review" ? { ...rows("keeps"), ...rows("corrections") } : {}),
  };
}

/** A draft to be kept over the version it was read at; 0 when there was none. */
export interface DraftToKeep {
  roundId: string;
  kind: DraftKind;
  coachPersonId: string;
  document: ReviewDraft | CheckDraft;
  version: number;
  nowMs: number;
}

/**
 * Keeps a draft whole.
 * @returns its new version, or null when somebody saved (or sent) in between; nothing is written then
 */
export async function keepDraft(tx: Db, draftToKeep: DraftToKeep): Promise<number | null> {
  const { roundId, kind, coachPersonId, version, nowMs } = draftToKeep;
  const document = JSON.stringify(draftToKeep.document);
  const next = version + 1;
  const kept =
    version === 0
      ? await tx
          .insert(draft)
          .values({
            roundId,
            kind,
            coachPersonId,
            document,
            version: next,
            openedAtMs: nowMs,
            savedAtMs: nowMs,
          })
          .onConflictDoNothing()
          .returning({ version: draft.version })
      : await tx
          .update(draft)
          .set({ coachPersonId, document, version: next, savedAtMs: nowMs })
          .where(and(eq(draft.roundId, roundId), eq(draft.kind, kind), eq(draft.version, version)))
          .returning({ version: draft.version });
  return kept[0]?.version ?? null;
}

/** Throws away what was being written: it has been sent. */
export async function dropDraft(tx: Db, roundId: string, kind: DraftKind): Promise<void> {
  await tx.delete(draft).where(and(eq(draft.roundId, roundId), eq(draft.kind, kind)));
}
