import { and, desc, eq, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { person } from "@/db/schema/people";
import { reportLink } from "@/db/schema/season-reports";
import { type AthleteScope, relationsOf } from "@/server/domain/access/relation";
import { type LinkState, linkState } from "@/server/domain/season-reports/report-link";
import type { SeasonSpan } from "@/server/domain/season-reports/season-span";
import { dayOf } from "@/server/domain/time/calendar-day";
import { actorOfPerson, athleteScope } from "./access";
import { newId } from "./new-id";

/** A link to a report, without its token, which nobody has but those it was given to. */
export interface KeptReportLink extends SeasonSpan {
  id: string;
  athleteId: string;
  madeByPersonId: string;
  madeAtMs: number;
  expiresAtMs: number;
  revokedAtMs: number | null;
}

const COLUMNS = {
  id: reportLink.id,
  athleteId: reportLink.athleteId,
  fromOn: reportLink.fromOn,
  toOn: reportLink.toOn,
  madeByPersonId: reportLink.madeByPersonId,
  madeAtMs: reportLink.madeAtMs,
  expiresAtMs: reportLink.expiresAtMs,
  revokedAtMs: reportLink.revokedAtMs,
} as const;

/** Keeps a link by the SHA-256 of its token. @returns its id */
export async function insertReportLink(
  tx: Db,
  link: Omit<typeof reportLink.$inferInsert, "id" | "revokedAtMs">,
): Promise<string> {
  const id = newId("rpl");
  await tx.insert(reportLink).values({ id, ...link });
  return id;
}

/** The links of an athlete, the latest first, each with its maker's name and how it stands. */
export async function reportLinksOf(db: Db, athlete: AthleteScope, nowMs: number) {
  const rows = await db
    .select({ link: COLUMNS, byGivenName: person.givenName, byFamilyName: person.familyName })
    .from(reportLink)
    .innerJoin(person, eq(person.id, reportLink.madeByPersonId))
    .where(eq(reportLink.athleteId, athlete.athleteId))
    .orderBy(desc(reportLink.madeAtMs), desc(reportLink.id));
  return Promise.all(
    rows.map(async ({ link, ...by }) => ({ ...link, ...by, state: await stateOf(db, link, athlete, nowMs) })),
  );
}

/** One link, or null. */
export async function findReportLink(db: Db, linkId: string): Promise<KeptReportLink | null> {
  const [row] = await db.select(COLUMNS).from(reportLink).where(eq(reportLink.id, linkId));
  return row ?? null;
}

/** The link behind a token's hash with its athlete while it opens, or null: never made, expired, revoked or stopped. */
export async function openReportLink(
  db: Db,
  tokenHash: string,
  nowMs: number,
): Promise<{ link: KeptReportLink; athlete: AthleteScope } | null> {
  const [link] = await db.select(COLUMNS).from(reportLink).where(eq(reportLink.tokenHash, tokenHash));
  const athlete = link ? await athleteScope(db, link.athleteId) : null;
  if (!link || !athlete) return null;
  return (await stateOf(db, link, athlete, nowMs)) === "open" ? { link, athlete } : null;
}

/** What access needs of the athlete a link is about, or null when there is no such link. */
export async function reportLinkScope(db: Db, linkId: string): Promise<AthleteScope | null> {
  const link = await findReportLink(db, linkId);
  return link ? athleteScope(db, link.athleteId) : null;
}

/** Ends a link at once; one that was ended stays as it is. @returns whether it was this that ended it */
export async function revokeReportLink(tx: Db, linkId: string, nowMs: number): Promise<boolean> {
  const ended = await tx
    .update(reportLink)
    .set({ revokedAtMs: nowMs })
    .where(and(eq(reportLink.id, linkId), isNull(reportLink.revokedAtMs)))
    .returning({ id: reportLink.id });
  return ended.length === 1;
}

async function stateOf(
  db: Db,
  link: KeptReportLink,
  athlete: AthleteScope,
  nowMs: number,
): Promise<LinkState> {
  const maker = await actorOfPerson(db, link.madeByPersonId);
  return linkState(link, relationsOf(maker, athlete, dayOf(nowMs, athlete.zone)), nowMs);
}
