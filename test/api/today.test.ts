import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { consent } from "@/db/schema/people";
import { session } from "@/db/schema/sessions";
import { insertThrowEntry } from "@/server/data/throw-log";
import { instantOf } from "@/server/domain/time/calendar-day";
import { type TestAcademy, WHO, ZONE } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";

let academy: TestAcademy;
let records: Record<"child" | "teen" | "adult" | "stranger", AthleteRecord>;

beforeEach(async () => {
  ({ academy, records } = await makeBusyAcademy());
});

const dayAs = async (personId: string) => (await academy.as(personId)).today.staff({});
const homeAs = async (personId: string, athleteId: string) =>
  (await academy.as(personId)).today.family({ athleteId });

describe("the day of staff", () => {
  it("holds today's sessions by the site's calendar, and no other day's", async () => {
    const { sessions, today, open } = await dayAs(WHO.coach);
    expect(today).toBe("2026-11-25");
    expect(sessions.map((each) => each.id).sort()).toEqual(
      Object.values(records)
        .map((record) => record.runningSession)
        .sort(),
    );
    expect(open).toEqual({ startMs: instantOf(today, 840, ZONE), endMs: instantOf(today, 1260, ZONE) });
  });

  it("puts a coach's own rounds and arms first, then what nobody has, then what others have", async () => {
    const { owed, arms } = await dayAs(WHO.otherCoach);
    const places = owed.map((row) => (row.isMine ? 0 : row.coachName === null ? 1 : 2));
    expect(places).toEqual(places.toSorted());
    expect(new Set(places)).toEqual(new Set([0, 1, 2]));
    expect(arms.map((arm) => arm.isMine)).toEqual([true, false, false, false]);
    expect(arms[0]?.athleteId).toBe(WHO.stranger.athleteId);
  });

  it("shows an admin every coach's", async () => {
    const { owed, sessions } = await dayAs(WHO.admin);
    expect(sessions).toHaveLength(4);
    expect(owed.filter((row) => row.isMine)).toEqual([]);
    expect(owed).toHaveLength((await dayAs(WHO.coach)).owed.length);
  });

  it("asks the book about an arm without today's sessions, and says when those have no room", async () => {
    const before = (await dayAs(WHO.coach)).arms.find((arm) => arm.athleteId === WHO.child.athleteId);
    expect(before?.withoutRoom).toEqual([]);
    await insertThrowEntry(academy.db, {
      athleteId: WHO.child.athleteId,
      thrownOn: "2026-11-24",
      kind: "game",
      pitches: 51,
      reportedByPersonId: WHO.guardian,
      reportedAtMs: academy.clock.ms,
    });
    const after = (await dayAs(WHO.coach)).arms.find((arm) => arm.athleteId === WHO.child.athleteId);
    expect(after?.arm.marks[0]).toMatchObject({ kind: "resting" });
    expect(after?.withoutRoom).toEqual(["asks for 15, none by the book now"]);
  });

  it("names sessions that ended and were never logged", async () => {
    academy.clock.ms += 86_400_000;
    const { unlogged, sessions } = await dayAs(WHO.coach);
    expect(unlogged).toHaveLength(4);
    expect(sessions).toEqual([]);
    await academy.db
      .update(session)
      .set({ state: "logged" })
      .where(eq(session.id, records.child.runningSession));
    expect((await dayAs(WHO.coach)).unlogged).toHaveLength(3);
  });

  it("names the next session of a coach when nobody comes", async () => {
    academy.clock.ms = instantOf("2026-11-29", 720, ZONE);
    const { next, open } = await dayAs(WHO.otherCoach);
    expect(next?.id).toBe(records.stranger.bookedSession);
    expect(open).toBeNull();
  });

  it("counts the demo's clips that are still being drawn", async () => {
    const before = (await dayAs(WHO.admin)).drawing;
    expect(before.drawing).toBe(0);
    await academy.db.update(clip).set({ state: "drawing" }).where(eq(clip.id, records.child.clips.sent));
    expect((await dayAs(WHO.admin)).drawing).toEqual({ ready: before.ready - 1, drawing: 1 });
  });

  it("is for staff alone", async () => {
    for (const personId of [WHO.guardian, WHO.teen.personId, WHO.adult.personId]) {
      await expect(dayAs(personId)).rejects.toMatchObject({ code: "NOT_FOUND" });
    }
  });
});

describe("a family's first screen", () => {
  it("answers what is worked on, when they come in, and what the book leaves today", async () => {
    const home = await homeAs(WHO.guardian, WHO.child.athleteId);
    expect(home.maxOpenCorrections).toBe(5);
    expect(home.corrections.map((correction) => correction.id)).toContain(records.child.correction);
    expect(home.sessions.at(-1)).toMatchObject({ id: records.child.bookedSession, plannedPitches: 15 });
    expect(home.arm.words).toMatch(/by the book$/);
    expect(home.round).not.toBeNull();
    expect(JSON.stringify(home)).not.toMatch(/marker-(teen|adult|stranger)/);
  });

  it("says that consent is missing, and who may give it", async () => {
    expect((await homeAs(WHO.guardian, WHO.teen.athleteId)).hasConsent).toBe(true);
    const [given] = await academy.db.select().from(consent).where(eq(consent.athleteId, WHO.teen.athleteId));
    if (!given) throw new Error("The teen's consent is missing from the test academy.");
    await academy.db
      .insert(consent)
      .values({ ...given, id: "con_withdrawn", kind: "withdrawn", atMs: academy.clock.ms });
    const asGuardian = await homeAs(WHO.guardian, WHO.teen.athleteId);
    const asTeen = await homeAs(WHO.teen.personId, WHO.teen.athleteId);
    expect([asGuardian.hasConsent, asGuardian.mayDecide]).toEqual([false, true]);
    expect([asTeen.hasConsent, asTeen.mayDecide]).toEqual([false, false]);
  });

  it("shows pain, and lets only the one who may clear it see that they may", async () => {
    const athleteId = WHO.teen.athleteId;
    await (await academy.as(WHO.coach)).throwing.reportPain({
      athleteId,
      kind: "pain",
      feltOn: "2026-11-25",
    });
    expect((await homeAs(WHO.guardian, athleteId)).pain.mayClear).toBe(true);
    const asTeen = await homeAs(WHO.teen.personId, athleteId);
    expect(asTeen.pain.mayClear).toBe(false);
    expect(asTeen.arm.words).toBe("no throwing: pain reported");
  });

  it("is not there for another family", async () => {
    for (const personId of [WHO.otherGuardian, WHO.adult.personId]) {
      await expect(homeAs(personId, WHO.child.athleteId)).rejects.toMatchObject({ code: "NOT_FOUND" });
    }
  });
});
