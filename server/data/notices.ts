import { and, asc, count, desc, eq, inArray, isNull, lte } from "drizzle-orm";
import type { Db } from "@/db/client";
import { notice } from "@/db/schema/notices";
import { account, athlete, guardianship, person } from "@/db/schema/people";
import { site } from "@/db/schema/sites";
import { type NoticeState, type NoticeWords, recipientsFor } from "@/server/domain/notices/notice";
import { isOfAge, maySignIn } from "@/server/domain/people/person";
import { ageOn, dayOf } from "@/server/domain/time/calendar-day";
import { newId } from "./new-id";

/** What a notice says, and what it says to others beside the one it is for. */
export interface NoticeText extends NoticeWords {
  /** What a minor's guardians read in place of the body, where that holds a link of the minor's own. */
  forGuardians?: string;
}

/**
 * Tells one person, in the transaction of what it tells of. A minor is never told alone: every guardian is told too, and
 * nobody when there is none.
 */
export async function tellPerson(
  tx: Db,
  toPersonId: string,
  text: NoticeText,
  nowMs: number,
  aboutAthleteId: string | null = null,
): Promise<void> {
  const minor = await minorOf(tx, toPersonId, nowMs);
  if (minor?.guardianIds.length === 0) return;
  await postNotice(tx, toPersonId, text, nowMs, aboutAthleteId);
  const copy = { ...text, body: text.forGuardians ?? text.body };
  for (const id of minor?.guardianIds ?? []) await postNotice(tx, id, copy, nowMs, minor?.athleteId);
}

/** The athlete that a person is while under 18, with those who stand for them; null for everybody else. */
async function minorOf(db: Db, personId: string, nowMs: number) {
  const [row] = await db
    .select({ athleteId: athlete.id, bornOn: athlete.bornOn, zone: site.zone })
    .from(athlete)
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(eq(athlete.personId, personId));
  if (!row || isOfAge(row.bornOn, dayOf(nowMs, row.zone))) return null;
  return { athleteId: row.athleteId, guardianIds: await guardianIdsOf(db, row.athleteId) };
}

/** Puts a notice to one person into the outbox. Whoever calls it sees to it that a minor's guardians are told too. */
export async function postNotice(
  tx: Db,
  toPersonId: string,
  { kind, subject, body }: NoticeText,
  nowMs: number,
  aboutAthleteId: string | null = null,
): Promise<void> {
  await tx.insert(notice).values({
    id: newId("ntc"),
    ...{ kind, subject, body },
    toPersonId,
    aboutAthleteId,
    state: "waiting",
    nextTryAtMs: nowMs,
    createdAtMs: nowMs,
  });
}

/** Tells an athlete's family: never a minor alone, a guardian of an athlete of age only when granted. */
export async function tellFamily(tx: Db, athleteId: string, text: NoticeText, nowMs: number): Promise<void> {
  for (const personId of await familyRecipients(tx, athleteId, nowMs)) {
    await postNotice(tx, personId, text, nowMs, athleteId);
  }
}

/** The people a notice about an athlete goes to on the day of `nowMs` at the home site. */
export async function familyRecipients(db: Db, athleteId: string, nowMs: number): Promise<string[]> {
  const [row] = await db
    .select({
      personId: athlete.personId,
      bornOn: athlete.bornOn,
      grantsGuardians: athlete.grantsGuardians,
      zone: site.zone,
    })
    .from(athlete)
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(eq(athlete.id, athleteId));
  if (!row) return [];
  const today = dayOf(nowMs, row.zone);
  return recipientsFor({
    athletePersonId: row.personId,
    ageYears: ageOn(row.bornOn, today),
    athleteHasSignIn: maySignIn(row.bornOn, today) && (await hasAccount(db, row.personId)),
    guardianPersonIds: await guardianIdsOf(db, athleteId),
    grantsGuardians: row.grantsGuardians,
  });
}

async function guardianIdsOf(db: Db, athleteId: string): Promise<string[]> {
  const rows = await db
    .select({ id: guardianship.guardianPersonId })
    .from(guardianship)
    .where(and(eq(guardianship.athleteId, athleteId), isNull(guardianship.endedAtMs)));
  return rows.map((row) => row.id);
}

async function hasAccount(db: Db, personId: string): Promise<boolean> {
  const [row] = await db
    .select({ id: account.personId })
    .from(account)
    .where(and(eq(account.personId, personId), isNull(account.disabledAtMs)));
  return row !== undefined;
}

/** A notice on its way out, with the address it goes to (null when the person has none). */
export interface OutgoingNotice {
  id: string;
  subject: string;
  body: string;
  email: string | null;
  attempts: number;
}

/** Up to `limit` notices whose time to be tried has come, oldest first. */
export async function dueNotices(db: Db, nowMs: number, limit: number): Promise<OutgoingNotice[]> {
  return db
    .select({
      id: notice.id,
      subject: notice.subject,
      body: notice.body,
      email: person.email,
      attempts: notice.attempts,
    })
    .from(notice)
    .innerJoin(person, eq(person.id, notice.toPersonId))
    .where(and(eq(notice.state, "waiting"), lte(notice.nextTryAtMs, nowMs)))
    .orderBy(asc(notice.createdAtMs))
    .limit(limit);
}

/** Writes down how a try went; `body` is what is kept in place of the words that have left. */
export async function settleNotice(
  tx: Db,
  id: string,
  outcome: {
    state: NoticeState;
    attempts: number;
    nextTryAtMs: number;
    lastError: string | null;
    sentAtMs: number | null;
    body?: string;
  },
): Promise<void> {
  await tx.update(notice).set(outcome).where(eq(notice.id, id));
}

/** Puts failed or kept notices back in line; used when mail was set up, or by an admin. */
export async function retryNotices(tx: Db, ids: readonly string[], nowMs: number): Promise<void> {
  await tx
    .update(notice)
    .set({ state: "waiting", attempts: 0, nextTryAtMs: nowMs })
    .where(and(inArray(notice.id, [...ids]), inArray(notice.state, ["failed", "kept"])));
}

/** One page of the outbox, latest first, of one state or of all, with the number of those that fit. */
export async function listNotices(
  db: Db,
  page: { limit: number; offset: number; state?: NoticeState | null },
) {
  const fits = page.state ? eq(notice.state, page.state) : undefined;
  const rows = await db
    .select({
      id: notice.id,
      kind: notice.kind,
      subject: notice.subject,
      body: notice.body,
      state: notice.state,
      lastError: notice.lastError,
      createdAtMs: notice.createdAtMs,
      sentAtMs: notice.sentAtMs,
      toGivenName: person.givenName,
      toFamilyName: person.familyName,
    })
    .from(notice)
    .innerJoin(person, eq(person.id, notice.toPersonId))
    .where(fits)
    .orderBy(desc(notice.createdAtMs), desc(notice.id))
    .limit(page.limit)
    .offset(page.offset);
  const [all] = await db.select({ total: count() }).from(notice).where(fits);
  return { rows, total: all?.total ?? 0 };
}

/** How many notices stand in each state. */
export async function countNotices(db: Db): Promise<Record<NoticeState, number>> {
  const rows = await db.select({ state: notice.state, notices: count() }).from(notice).groupBy(notice.state);
  const counts = { waiting: 0, sent: 0, kept: 0, failed: 0 };
  for (const row of rows) counts[row.state] = row.notices;
  return counts;
}
