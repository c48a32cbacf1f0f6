import { coachAbsence } from "@/db/schema/coaches";
import { charge } from "@/db/schema/ledger";
import { notice } from "@/db/schema/notices";
import { remark } from "@/db/schema/people";
import { reportLink, seasonReport } from "@/db/schema/season-reports";
import { claim, session, sessionAthlete } from "@/db/schema/sessions";
import { siteClosure } from "@/db/schema/sites";
import { athleteTeam, painReport, plannedOuting, throwEntry } from "@/db/schema/throwing";
import { hashOfToken } from "@/server/auth/link-token";
import { instantOf } from "@/server/domain/time/calendar-day";
import { makeAcademy, type TestAcademy, WHO, ZONE } from "./academy";
import type { AthleteRecord } from "./athlete-record";
import { fillBlindSet, fillCorrections, fillMeasures, fillRounds } from "./busy-rounds";
import { keepOwnBook } from "./own-book";
import { keepOwnTemplate } from "./own-template";
import { ownersOf } from "./owners";

const HOUR = 3_600_000;

/** The small academy with a round in every state, sessions, throws and charges for every athlete. */
export async function makeBusyAcademy(): Promise<{
  academy: TestAcademy;
  records: Record<"child" | "teen" | "adult" | "stranger", AthleteRecord>;
}> {
  const academy = await makeAcademy();
  const records = {
    child: await fill(academy, WHO.child, 0),
    teen: await fill(academy, WHO.teen, 1),
    adult: await fill(academy, WHO.adult, 2),
    stranger: await fill(academy, WHO.stranger, 3),
  };
  await keepOwnBook(academy.db);
  await keepOwnTemplate(academy.db);
  await academy.db.insert(siteClosure).values({
    id: "clo_holiday",
    siteId: WHO.site,
    closedOn: "2027-01-01",
    reason: "Holiday",
  });
  await academy.db.insert(coachAbsence).values({
    id: "abs_coach",
    coachPersonId: WHO.coach,
    startsAtMs: instantOf("2027-02-01", 0, ZONE),
    endsAtMs: instantOf("2027-02-02", 0, ZONE),
  });
  return { academy, records };
}

async function fill(
  academy: TestAcademy,
  who: { athleteId: string; personId: string },
  place: number,
): Promise<AthleteRecord> {
  const record = recordOf(who);
  await fillRounds(academy, record, ownersOf(record.athleteId));
  await fillCorrections(academy, record, ownersOf(record.athleteId).coach);
  await fillMeasures(academy, record, ownersOf(record.athleteId).coach);
  await fillBlindSet(academy, record);
  await fillSessions(academy, record, place);
  await fillThrows(academy, record);
  await fillReports(academy, record);
  return record;
}

function recordOf(who: { athleteId: string; personId: string }): AthleteRecord {
  const short = who.athleteId.replace("ath_", "");
  const states = ["received", "taken", "sent", "answered", "settled", "retake"] as const;
  const ids = (prefix: string) =>
    Object.fromEntries(
      states.map((state) => [state, `${prefix}_${state}_${short}`]),
    ) as AthleteRecord["rounds"];
  return {
    ...who,
    marker: `marker-${short}-only`,
    rounds: ids("rnd"),
    clips: { ...ids("clp"), waiting: `clp_waiting_${short}` },
    reviews: {
      sent: `rev_sent_${short}`,
      answered: `rev_answered_${short}`,
      settled: `rev_settled_${short}`,
    },
    correction: `cor_sent_${short}`,
    answeredCorrection: `cor_answered_${short}`,
    measurement: `msr_sent_${short}`,
    remeasureRequest: `rmr_${short}`,
    blindSet: `bls_${short}`,
    blindItem: `bli_${short}`,
    bookedSession: `ses_booked_${short}`,
    loggedSession: `ses_logged_${short}`,
    runningSession: `ses_running_${short}`,
    throwEntry: `thr_${short}`,
    outing: `out_${short}`,
    team: `tea_${short}`,
    reportLink: `rpl_${short}`,
  };
}

async function fillSessions({ db, clock }: TestAcademy, record: AthleteRecord, place: number) {
  const { coach, lane, guardian } = ownersOf(record.athleteId);
  const rows = [
    {
      id: record.bookedSession,
      state: "booked",
      startsAtMs: instantOf("2026-12-04", 900 + place * 60, ZONE),
    },
    {
      id: record.runningSession,
      state: "booked",
      startsAtMs: instantOf("2026-11-25", 840 + place * 15, ZONE),
    },
    {
      id: record.loggedSession,
      state: "logged",
      startsAtMs: instantOf("2026-11-10", 900 + place * 60, ZONE),
    },
  ] as const;
  for (const row of rows) {
    await db.insert(session).values({
      ...row,
      kind: "bullpen",
      siteId: WHO.site,
      laneId: lane,
      coachPersonId: coach,
      endsAtMs: row.startsAtMs + 15 * 60_000,
      places: 1,
      secondAdultKind: guardian ? "guardian" : null,
      secondAdultPersonId: guardian,
      bookedByPersonId: coach,
      bookedAtMs: clock.ms - 72 * HOUR,
    });
    await db
      .insert(sessionAthlete)
      .values({ sessionId: row.id, athleteId: record.athleteId, plannedPitches: 15 });
    for (const resource of [`coach:${coach}`, `lane:${lane}`, `athlete:${record.athleteId}`]) {
      await db.insert(claim).values({
        id: `clm_${row.id}_${resource}`,
        sessionId: row.id,
        resource,
        startsAtMs: row.startsAtMs,
        endsAtMs: row.startsAtMs + 15 * 60_000,
      });
    }
  }
  await db.insert(charge).values({
    id: `chg_${record.athleteId}`,
    athleteId: record.athleteId,
    kind: "bullpen",
    sessionId: record.loggedSession,
    coachPersonId: coach,
    siteId: WHO.site,
    chargedOn: "2026-11-10",
    rateId: "rate_bullpen",
    amountCents: 8000,
    currency: "USD",
    atMs: clock.ms - 300 * HOUR,
  });
}

async function fillThrows({ db, clock }: TestAcademy, record: AthleteRecord) {
  await db.insert(remark).values({ id: `rmk_${record.athleteId}`, text: `${record.marker} remark` });
  await db.insert(athleteTeam).values({
    id: record.team,
    athleteId: record.athleteId,
    name: `${record.marker} team`,
    ruleBookId: "usa-baseball-2018",
    addedByPersonId: record.personId,
    addedAtMs: clock.ms - 400 * HOUR,
  });
  await db.insert(throwEntry).values({
    id: record.throwEntry,
    athleteId: record.athleteId,
    thrownOn: "2026-11-14",
    kind: "game",
    pitches: 30,
    reportedByPersonId: record.personId,
    reportedAtMs: clock.ms - 260 * HOUR,
    remarkId: `rmk_${record.athleteId}`,
    teamId: record.team,
  });
  await db.insert(plannedOuting).values({
    id: record.outing,
    athleteId: record.athleteId,
    plannedOn: "2026-12-12",
    pitches: 40,
    addedByPersonId: record.personId,
    addedAtMs: clock.ms - 20 * HOUR,
  });
  await db.insert(notice).values({
    id: `ntc_${record.athleteId}`,
    kind: "review_sent",
    toPersonId: ownersOf(record.athleteId).guardian ?? record.personId,
    aboutAthleteId: record.athleteId,
    subject: "A review is in",
    body: `${record.marker} notice`,
    state: "kept",
    nextTryAtMs: clock.ms,
    createdAtMs: clock.ms - 30 * HOUR,
  });
}

/** What the coach wrote into the report of a season, and a link to it by whoever decides for the athlete. */
async function fillReports({ db, clock }: TestAcademy, record: AthleteRecord) {
  const { coach, guardian } = ownersOf(record.athleteId);
  const season = { athleteId: record.athleteId, fromOn: "2026-01-01", toOn: "2026-12-31" };
  await db.insert(remark).values({ id: `rmk_focus_${record.athleteId}`, text: `${record.marker} focus` });
  await db.insert(seasonReport).values({
    ...season,
    id: `spr_${record.athleteId}`,
    focusRemarkId: `rmk_focus_${record.athleteId}`,
    writtenByPersonId: coach,
    writtenAtMs: clock.ms - 24 * HOUR,
  });
  await db.insert(reportLink).values({
    ...season,
    id: record.reportLink,
    tokenHash: hashOfToken(`token of ${record.athleteId}`),
    madeByPersonId: guardian ?? record.personId,
    madeAtMs: clock.ms - 12 * HOUR,
    expiresAtMs: clock.ms + 30 * 24 * HOUR,
  });
}

/** Stops an athlete's arm, as a report of pain does. */
export async function reportPainFor({ db, clock }: TestAcademy, record: AthleteRecord) {
  await db.insert(painReport).values({
    id: `pan_${record.athleteId}`,
    athleteId: record.athleteId,
    kind: "pain",
    feltOn: "2026-11-24",
    reportedByPersonId: record.personId,
    reportedAtMs: clock.ms - HOUR,
  });
}
