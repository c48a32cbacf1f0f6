import { eq, inArray } from "drizzle-orm";
import { correctionEvent } from "@/db/schema/corrections";
import { charge } from "@/db/schema/ledger";
import { person, remark } from "@/db/schema/people";
import { addendum, keep, review } from "@/db/schema/reviews";
import { draft, round } from "@/db/schema/rounds";
import { claim, session, sessionAthlete, sessionLog, sessionPlan, sessionWork } from "@/db/schema/sessions";
import { checkIn, painClearance, painReport, throwEntry } from "@/db/schema/throwing";
import { EMPTY_CHECK_DRAFT, EMPTY_REVIEW_DRAFT } from "@/server/domain/reviews/draft";
import { instantOf } from "@/server/domain/time/calendar-day";
import { type TestAcademy, WHO, ZONE } from "./academy";
import type { AthleteRecord } from "./athlete-record";
import { makeBusyAcademy } from "./busy-academy";
import { ownersOf } from "./owners";

const HOUR = 3_600_000;

/** Who belongs together, and the texts that stand in their rows alone: words of their own, and what their ids end on. */
export const FAMILIES = {
  marsh: {
    personIds: [WHO.guardian, WHO.child.personId, WHO.teen.personId],
    marks: ["marsh-only", "_child", "_teen", WHO.guardian],
  },
  stone: {
    personIds: [WHO.otherGuardian, WHO.stranger.personId],
    marks: ["stone-only", "_stranger", WHO.otherGuardian],
  },
  vale: { personIds: [WHO.adult.personId], marks: ["vale-only", "_adult"] },
} as const;
export type Family = keyof typeof FAMILIES;

/** The sessions that the child and the stranger come to together: one ahead, one under way, one logged. */
export const SHARED_SESSIONS = { booked: "ses_shared_a", running: "ses_shared_b", logged: "ses_shared_c" };

type Records = Awaited<ReturnType<typeof makeBusyAcademy>>["records"];
type Db = TestAcademy["db"];

/** The busy academy with every name, address and free text of a family marked as its own, and sessions two families share. */
export async function makeMarkedAcademy() {
  const { academy, records } = await makeBusyAcademy();
  for (const family of Object.keys(FAMILIES) as Family[]) await markPeople(academy.db, family);
  const of = { child: "marsh", teen: "marsh", adult: "vale", stranger: "stone" } as const;
  for (const [name, record] of Object.entries(records) as [keyof Records, AthleteRecord][]) {
    const says = `${of[name]}-only`;
    await sayOnRounds(academy, record, says);
    await sayOfThrowing(academy, record, says);
  }
  for (const [state, id] of Object.entries(SHARED_SESSIONS)) await shareSession(academy, records, state, id);
  return { academy, records };
}

async function markPeople(db: Db, family: Family) {
  const ids = [...FAMILIES[family].personIds];
  for (const row of await db.select().from(person).where(inArray(person.id, ids))) {
    const mark = `${family}-only`;
    const names = { givenName: `${row.givenName} ${mark}`, familyName: `${row.familyName} ${mark}` };
    const addresses = { email: `${mark}.${row.email}`, phone: mark };
    await db
      .update(person)
      .set({ ...names, ...addresses })
      .where(eq(person.id, row.id));
  }
}

async function say(db: Db, id: string, text: string): Promise<string> {
  await db.insert(remark).values({ id, text });
  return id;
}

/** Words in every place of the rounds that takes them: retake, keep, note, addendum, verdict, drafts. */
async function sayOnRounds({ db, clock }: TestAcademy, record: AthleteRecord, says: string) {
  const { coach } = ownersOf(record.athleteId);
  const own = (what: string) => `${what}_${record.athleteId}`;
  const text = (what: string) => `${says} ${what}`;
  await db
    .update(round)
    .set({ retakeRemarkId: await say(db, own("rmk_retake"), text("retake")) })
    .where(eq(round.id, record.rounds.retake));
  await db.insert(keep).values({
    ...{ id: own("kep"), reviewId: record.reviews.sent, phase: "stride", text: text("keep") },
    ...{ clipId: record.clips.sent, frame: 3, position: 1 },
  });
  await db.insert(review).values({
    ...{ id: own("rvc"), roundId: record.rounds.settled, athleteId: record.athleteId, kind: "check" },
    ...{ coachPersonId: coach, remarkId: await say(db, own("rmk_check"), text("check")) },
    ...{ openedAtMs: clock.ms - 6 * HOUR, sentAtMs: clock.ms - 5 * HOUR },
  });
  await db.insert(addendum).values({
    ...{ id: own("add"), reviewId: record.reviews.sent, coachPersonId: coach, atMs: clock.ms - HOUR },
    remarkId: await say(db, own("rmk_add"), text("addendum")),
  });
  await db.insert(correctionEvent).values({
    ...{ id: own("cev_more"), correctionId: record.answeredCorrection, kind: "partly" },
    ...{ roundId: record.rounds.answered, actorPersonId: coach, atMs: clock.ms - HOUR },
    remarkId: await say(db, own("rmk_verdict"), text("verdict")),
  });
  const kept = { coachPersonId: coach, version: 1, openedAtMs: clock.ms, savedAtMs: clock.ms };
  await db.insert(draft).values([
    {
      ...{ ...kept, roundId: record.rounds.taken, kind: "review" },
      document: JSON.stringify({
        ...EMPTY_REVIEW_DRAFT,
        keeps: [
          { id: "k1", checkpointId: null, phase: "stride", text: text("draft"), clipId: null, frame: null },
        ],
      }),
    },
    {
      ...{ ...kept, roundId: record.rounds.answered, kind: "check" },
      document: JSON.stringify({ ...EMPTY_CHECK_DRAFT, note: text("draft") }),
    },
  ]);
}

/** Pain reported and cleared, then reported again, each with words. */
async function sayOfThrowing({ db, clock }: TestAcademy, record: AthleteRecord, says: string) {
  const own = (what: string) => `${what}_${record.athleteId}`;
  const by = { athleteId: record.athleteId, reportedByPersonId: record.personId };
  for (const [name, hoursAgo, feltOn] of [
    ["early", 400, "2026-11-08"],
    ["late", 30, "2026-11-24"],
  ] as const) {
    await db.insert(painReport).values({
      ...{ ...by, id: own(`pai_${name}`), kind: "pain", feltOn, reportedAtMs: clock.ms - hoursAgo * HOUR },
      remarkId: await say(db, own(`rmk_pain_${name}`), `${says} pain`),
    });
  }
  await db.insert(painClearance).values({
    ...{ id: own("pcl"), athleteId: record.athleteId, symptomFreeSince: "2026-11-09" },
    ...{ clearedByPersonId: record.personId, clearedAtMs: clock.ms - 350 * HOUR },
    examinedByRemarkId: await say(db, own("rmk_examined"), `${says} physician`),
  });
}

const STARTS = {
  booked: instantOf("2026-12-09", 1080, ZONE),
  running: instantOf("2026-11-25", 960, ZONE),
  logged: instantOf("2026-11-12", 1080, ZONE),
} as Record<string, number>;

/** A group session of the child and the stranger, with the plan, and once logged the line, of each. */
async function shareSession(academy: TestAcademy, records: Records, state: string, id: string) {
  const { db, clock } = academy;
  const startsAtMs = STARTS[state] ?? 0;
  const span = { startsAtMs, endsAtMs: startsAtMs + HOUR };
  const place = { kind: "group", siteId: WHO.site, laneId: WHO.moundLane, coachPersonId: WHO.coach } as const;
  await db.insert(session).values({
    ...{ ...place, ...span, id, state: state === "logged" ? "logged" : "booked", places: 8 },
    ...{ bookedByPersonId: WHO.coach, bookedAtMs: clock.ms - 400 * HOUR },
  });
  for (const record of [records.child, records.stranger]) {
    const { athleteId } = record;
    await db.insert(sessionAthlete).values({ sessionId: id, athleteId, plannedPitches: 12 });
    await db.insert(sessionPlan).values({ sessionId: id, correctionId: record.correction });
    const resource = `athlete:${athleteId}`;
    await db.insert(claim).values({ ...span, id: `clm_${id}_${athleteId}`, sessionId: id, resource });
    if (state === "logged") await logShared(academy, record, id);
  }
}

async function logShared({ db, clock }: TestAcademy, record: AthleteRecord, sessionId: string) {
  const { athleteId, correction } = record;
  const at = clock.ms - 300 * HOUR;
  const own = (what: string) => `${what}_shared_${athleteId}`;
  const says = athleteId === WHO.child.athleteId ? "marsh-only" : "stone-only";
  const remarkId = await say(db, own("rmk"), `${says} log`);
  await db.insert(sessionLog).values({
    ...{ id: own("slg"), sessionId, athleteId, attendance: "came", minutes: 60, pitches: 12, remarkId },
    ...{ loggedByPersonId: WHO.coach, loggedAtMs: at },
  });
  await db
    .insert(sessionWork)
    .values({ sessionLogId: own("slg"), correctionId: correction, outcome: "worked_on" });
  await db.insert(checkIn).values({
    ...{ id: own("chk"), sessionId, athleteId, thrownSince: false, pain: false },
    ...{ askedByPersonId: WHO.coach, atMs: at },
  });
  await db.insert(throwEntry).values({
    ...{ id: own("thr"), athleteId, thrownOn: "2026-11-12", kind: "bullpen", pitches: 12, sessionId },
    ...{ reportedByPersonId: WHO.coach, reportedAtMs: at },
  });
  await db.insert(charge).values({
    ...{ id: own("chg"), athleteId, kind: "group", sessionId, coachPersonId: WHO.coach, siteId: WHO.site },
    ...{ chargedOn: "2026-11-12", rateId: "rate_group", amountCents: 3000, currency: "USD", atMs: at },
  });
}
