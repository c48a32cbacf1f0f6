import { z } from "zod";
import type { LoggedThrows } from "@/server/data/throwing-log";
import { fullName } from "@/server/domain/people/person";
import { currentEntries, THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import type { Scope } from "../context";

/** One row of the log as it is shown: what was thrown, what a game says, who wrote it, what it corrects. */
export const logRow = z.strictObject({
  id: z.string(),
  thrownOn: z.string(),
  kind: z.enum(THROW_KINDS),
  pitches: z.int(),
  /** Outs in thirds of an inning; null where nobody said. */
  outs: z.int().nullable(),
  inningsCaught: z.int().nullable(),
  pitchesAtLastBatter: z.int().nullable(),
  intentionalWalks: z.int(),
  teamId: z.string().nullable(),
  teamName: z.string(),
  opponent: z.string(),
  note: z.string(),
  byName: z.string(),
  reportedAtMs: z.number(),
  origin: z.enum(["log", "session", "clip"]),
  /** What the row it corrects had said; null when it corrects none. */
  corrects: z.strictObject({ thrownOn: z.string(), kind: z.enum(THROW_KINDS), pitches: z.int() }).nullable(),
  mayCorrect: z.boolean(),
});

/** The rows of a log that stand, each with what it corrects. */
export function logAnswer(scope: Scope, rows: readonly LoggedThrows[]): z.output<typeof logRow>[] {
  const byId = new Map(rows.map((row) => [row.id, row]));
  return currentEntries(rows).map((row) => {
    const { athleteId: _, sessionId: __, clipId: ___, byGivenName, byFamilyName, replacesId, ...told } = row;
    const before = replacesId ? byId.get(replacesId) : undefined;
    return {
      ...told,
      byName: fullName({ givenName: byGivenName, familyName: byFamilyName }),
      origin: originOf(row),
      corrects: before ? { thrownOn: before.thrownOn, kind: before.kind, pitches: before.pitches } : null,
      mayCorrect: mayCorrect(scope, row),
    };
  });
}

function originOf(row: { sessionId: string | null; clipId: string | null }) {
  if (row.sessionId) return "session" as const;
  return row.clipId ? ("clip" as const) : ("log" as const);
}

/** What was logged with a session is the coach's record: only coaches and admins correct it. */
export function mayCorrect({ relations }: Scope, row: { sessionId: string | null }): boolean {
  const isStaff = relations.has("coach") || relations.has("admin");
  return isStaff || row.sessionId === null;
}
