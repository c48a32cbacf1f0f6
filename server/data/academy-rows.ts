import type { SQLiteTable } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { clip } from "@/db/schema/clips";
import { coachAbsence, coachHours } from "@/db/schema/coaches";
import { correction, correctionEvent, practiceDay } from "@/db/schema/corrections";
import { charge, rate } from "@/db/schema/ledger";
import {
  blindItem,
  blindRating,
  blindSet,
  drawnMark,
  eventMark,
  judgement,
  measurement,
  remeasureRequest,
} from "@/db/schema/mechanics";
import { notice } from "@/db/schema/notices";
import {
  academy,
  account,
  athlete,
  consent,
  guardianship,
  person,
  remark,
  staffRole,
} from "@/db/schema/people";
import { addendum, keep, review, reviewTemplate } from "@/db/schema/reviews";
import { draft, round, roundEvent } from "@/db/schema/rounds";
import { claim, session, sessionAthlete, sessionLog, sessionPlan, sessionWork } from "@/db/schema/sessions";
import { lane, site, siteClosure, siteHours } from "@/db/schema/sites";
import {
  athleteTeam,
  checkIn,
  painClearance,
  painReport,
  plannedOuting,
  throwEntry,
} from "@/db/schema/throwing";

/** Every table a whole academy is written to, each after those its rows refer to. */
const TABLES = {
  academy,
  person,
  site,
  siteHours,
  siteClosure,
  lane,
  account,
  staffRole,
  coachHours,
  coachAbsence,
  athlete,
  guardianship,
  consent,
  checkpoint,
  reviewTemplate,
  rate,
  remark,
  round,
  roundEvent,
  clip,
  draft,
  review,
  addendum,
  keep,
  eventMark,
  judgement,
  measurement,
  remeasureRequest,
  blindSet,
  blindItem,
  blindRating,
  drawnMark,
  correction,
  correctionEvent,
  practiceDay,
  session,
  sessionAthlete,
  sessionPlan,
  claim,
  sessionLog,
  sessionWork,
  checkIn,
  athleteTeam,
  throwEntry,
  plannedOuting,
  painReport,
  painClearance,
  charge,
  notice,
} as const;

type TableName = keyof typeof TABLES;

/** The rows of a whole academy, by table. The audit log is not among them: its rows are chained as they are written. */
export type AcademyRows = { [Name in TableName]: (typeof TABLES)[Name]["$inferInsert"][] };

/** The names of the tables in the order in which they are written. */
export const ACADEMY_TABLES = Object.keys(TABLES) as TableName[];

/** An academy without a single row. */
export function noAcademyRows(): AcademyRows {
  return Object.fromEntries(ACADEMY_TABLES.map((name) => [name, []])) as unknown as AcademyRows;
}

/* The widest table has 27 columns; SQLite takes 32 766 values in one statement. */
const ROWS_AT_ONCE = 250;

/**
 * Writes a whole academy into an empty database, in the given unit of work.
 * @throws the database's error when a row breaks a constraint or a trigger
 */
export async function insertAcademyRows(tx: Db, rows: AcademyRows): Promise<void> {
  for (const name of ACADEMY_TABLES) {
    const all: Record<string, unknown>[] = rows[name];
    for (let from = 0; from < all.length; from += ROWS_AT_ONCE) {
      await tx.insert(TABLES[name] as SQLiteTable).values(all.slice(from, from + ROWS_AT_ONCE));
    }
  }
}
