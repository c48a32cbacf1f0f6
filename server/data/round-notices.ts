import { and, eq, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete, staffRole } from "@/db/schema/people";
import {
  arrivalNotices,
  lapseNotice,
  retakeNotice,
  withdrawalNotice,
} from "@/server/domain/notices/round-notices";
import { fullName } from "@/server/domain/people/person";
import type { ReplyWindow } from "@/server/domain/reviews/reply-window";
import { momentInWords } from "@/server/domain/time/words";
import { nameOf, nameOfAthlete } from "./names";
import { type NoticeText, tellFamily, tellPerson } from "./notices";
import type { PromiseHours } from "./promise-hours";

/** Who a round is about and who has it (null: nobody yet). */
export interface RoundOf {
  athleteId: string;
  coachPersonId: string | null;
}

/** Tells the family by when their clips are looked at, and the coach that there is something to look at. */
export async function tellOfClips(
  tx: Db,
  round: RoundOf,
  arrival: { isReply: boolean; dueAtMs: number; hours: PromiseHours },
  nowMs: number,
): Promise<void> {
  const { givenName } = await nameOfAthlete(tx, round.athleteId);
  const due = `${momentInWords(arrival.dueAtMs, arrival.hours.zone)} (${arrival.hours.siteName})`;
  const words = arrivalNotices({ givenName, isReply: arrival.isReply, due });
  await tellFamily(tx, round.athleteId, words.family, nowMs);
  await tellCoach(tx, round, nowMs, words.coach);
}

/** Tells the athlete's own coach that somebody else has taken the round; nothing when they took it themselves. */
export async function tellOfTaking(
  tx: Db,
  athleteId: string,
  takerPersonId: string,
  nowMs: number,
): Promise<void> {
  const ownCoachId = await ownCoachOf(tx, athleteId);
  if (!ownCoachId || ownCoachId === takerPersonId) return;
  const { givenName } = await nameOfAthlete(tx, athleteId);
  const taker = fullName(await nameOf(tx, takerPersonId));
  const text: NoticeText = {
    kind: "round_taken",
    subject: `${taker} has taken ${givenName}'s round`,
    body: `${taker} reviews this clip of ${givenName}. You need do nothing.`,
  };
  await tellPerson(tx, ownCoachId, text, nowMs, athleteId);
}

/** Tells a coach that a round was handed to them, and the one who had it that it is theirs no longer. */
export async function tellOfHandOver(
  tx: Db,
  round: RoundOf,
  handOver: { toPersonId: string; byPersonId: string; dueAtMs: number | null; zone: string },
  nowMs: number,
): Promise<void> {
  const { toPersonId, byPersonId, dueAtMs, zone } = handOver;
  const { givenName } = await nameOfAthlete(tx, round.athleteId);
  const due = dueAtMs === null ? "" : ` It is owed by ${momentInWords(dueAtMs, zone)}.`;
  const to = fullName(await nameOf(tx, toPersonId));
  const by = fullName(await nameOf(tx, byPersonId));
  if (toPersonId !== byPersonId) {
    const body = `${by} handed you the round of ${givenName}.${due} What was written so far goes with it.`;
    const text: NoticeText = { kind: "round_taken", subject: `${givenName}'s round is yours now`, body };
    await tellPerson(tx, toPersonId, text, nowMs, round.athleteId);
  }
  const before = round.coachPersonId;
  if (before && before !== byPersonId && before !== toPersonId) {
    const body = `${by} handed the round of ${givenName} to ${to}. You need do nothing.`;
    const text: NoticeText = { kind: "round_taken", subject: `${to} has ${givenName}'s round now`, body };
    await tellPerson(tx, before, text, nowMs, round.athleteId);
  }
}

/** Asks the family for another clip: why, and not before the arm's first free day. */
export async function tellOfRetake(
  tx: Db,
  athleteId: string,
  retake: { reason: string; window: ReplyWindow },
  nowMs: number,
): Promise<void> {
  const { givenName } = await nameOfAthlete(tx, athleteId);
  await tellFamily(tx, athleteId, retakeNotice({ givenName, ...retake }), nowMs);
}

/** Tells everybody but the one who did it that a round was withdrawn, and why. */
export async function tellOfWithdrawal(
  tx: Db,
  round: RoundOf,
  withdrawal: { reason: string; byPersonId: string },
  nowMs: number,
): Promise<void> {
  const { givenName } = await nameOfAthlete(tx, round.athleteId);
  const byName = fullName(await nameOf(tx, withdrawal.byPersonId));
  const text = withdrawalNotice({ givenName, byName, reason: withdrawal.reason });
  await tellFamily(tx, round.athleteId, text, nowMs);
  const coachId = round.coachPersonId ?? (await ownCoachOf(tx, round.athleteId));
  if (coachId && coachId !== withdrawal.byPersonId)
    await tellPerson(tx, coachId, text, nowMs, round.athleteId);
}

/** Tells the family that the time for a clip has passed. */
export async function tellOfLapse(tx: Db, athleteId: string, lapsesOn: string, nowMs: number): Promise<void> {
  const { givenName } = await nameOfAthlete(tx, athleteId);
  await tellFamily(tx, athleteId, lapseNotice({ givenName, lapsesOn }), nowMs);
}

/** The one who has the round, else the athlete's own coach, else every admin. */
async function tellCoach(tx: Db, round: RoundOf, nowMs: number, text: NoticeText): Promise<void> {
  const coachId = round.coachPersonId ?? (await ownCoachOf(tx, round.athleteId));
  const personIds = coachId ? [coachId] : await adminIds(tx);
  for (const personId of personIds) await tellPerson(tx, personId, text, nowMs, round.athleteId);
}

async function ownCoachOf(db: Db, athleteId: string): Promise<string | null> {
  const [row] = await db.select({ id: athlete.coachPersonId }).from(athlete).where(eq(athlete.id, athleteId));
  return row?.id ?? null;
}

async function adminIds(db: Db): Promise<string[]> {
  const admins = await db
    .select({ personId: staffRole.personId })
    .from(staffRole)
    .where(and(eq(staffRole.role, "admin"), isNull(staffRole.endedAtMs)));
  return admins.map((admin) => admin.personId);
}
