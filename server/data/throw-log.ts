import type { Db } from "@/db/client";
import { painReport, throwEntry } from "@/db/schema/throwing";
import type { PainKind } from "@/server/domain/throwing/pain";
import type { ThrowKind } from "@/server/domain/throwing/throw-entry";
import type { GameDetails } from "@/server/domain/throwing/validate-game";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { newId } from "./new-id";

/** Throws of one day as they are written down; checked before by `entryRefusals` and `gameProblem`. */
export interface NewThrowEntry extends Partial<GameDetails> {
  athleteId: string;
  /** Day at the athlete's home site. */
  thrownOn: CalendarDay;
  kind: ThrowKind;
  pitches: number;
  reportedByPersonId: string;
  reportedAtMs: number;
  /** The session, or the clip, that the throws were thrown in. */
  sessionId?: string | null;
  clipId?: string | null;
  /** The entry that this one corrects. */
  replacesId?: string | null;
  remarkId?: string | null;
  /** The other side's name, kept as a remark. */
  opponentRemarkId?: string | null;
  /** Of an imported row: see `importKeyOf`. */
  importKey?: string | null;
}

/**
 * Appends throws to the log.
 * @returns the id of the entry
 * @throws the database's error when the entry to replace was replaced already, or the row was imported already
 */
export async function insertThrowEntry(tx: Db, entry: NewThrowEntry): Promise<string> {
  const id = newId("thr");
  await tx.insert(throwEntry).values({ id, ...entry });
  return id;
}

/** Pain or unusual fatigue as it is written down. */
export interface NewPainReport {
  athleteId: string;
  kind: PainKind;
  /** Day at the athlete's home site. */
  feltOn: CalendarDay;
  reportedByPersonId: string;
  reportedAtMs: number;
  /** The session at whose check-in it was said. */
  sessionId?: string | null;
  remarkId?: string | null;
}

/**
 * Appends a report of pain, which stops the arm from then on until it is cleared.
 * @returns the id of the report
 */
export async function insertPainReport(tx: Db, report: NewPainReport): Promise<string> {
  const id = newId("pai");
  await tx.insert(painReport).values({ id, ...report });
  return id;
}
