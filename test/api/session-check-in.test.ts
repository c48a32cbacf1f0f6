import { beforeEach, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { session } from "@/db/schema/sessions";
import { painReport } from "@/db/schema/throwing";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { at, bullpen, expectRefused, TUESDAY_AT_FIVE } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const book = async (over: Parameters<typeof bullpen>[0] = {}, by: string = WHO.guardian) =>
  (await academy.as(by)).sessions.book(bullpen(over));

const expectRefusal = (call: () => Promise<unknown>, detail: object) => expectRefused(academy, call, detail);

describe("checking in", () => {
  const none = { throws: [], pain: null };

  async function openSession() {
    const { sessionId } = await book();
    academy.clock.ms = TUESDAY_AT_FIVE - 10 * 60_000;
    return sessionId;
  }

  it("opens an hour before the start, for coaches alone", async () => {
    const { sessionId } = await book();
    const asked = { sessionId, athleteId: WHO.child.athleteId, ...none };
    await expectRefusal(async () => (await academy.as(WHO.coach)).sessions.checkIn(asked), {
      reason: "session_not_started",
    });
    academy.clock.ms = TUESDAY_AT_FIVE - 60 * 60_000;
    for (const person of [WHO.guardian, WHO.admin, WHO.otherGuardian]) {
      await expectRefusal(async () => (await academy.as(person)).sessions.checkIn(asked), {
        reason: "not_found",
      });
    }
    await (await academy.as(WHO.coach)).sessions.checkIn(asked);
    expect((await academy.db.select().from(session))[0]?.state).toBe("checked_in");
  });

  it("puts what was thrown on the log and flags, once, the session that lost its room", async () => {
    const sessionId = await openSession();
    const later = await book({ startsAtMs: at("2026-12-03", 1020) });
    const coach = await academy.as(WHO.coach);
    const throws = [{ thrownOn: "2026-11-30", kind: "game" as const, pitches: 51 }];
    const asked = { sessionId, athleteId: WHO.child.athleteId, throws, pain: null };
    expect(await coach.sessions.checkIn(asked)).toEqual({ sessionsWithoutRoom: 2 });
    await coach.sessions.checkIn({
      ...asked,
      throws: [{ ...throws[0], thrownOn: "2026-11-28", kind: "long_toss", pitches: 30 }] as never,
    });
    const flagged = (await academy.db.select().from(notice)).filter(
      (row) => row.kind === "session_without_room",
    );
    expect(flagged.map((row) => [row.toPersonId, row.subject])).toEqual([
      [WHO.guardian, "Kit: no room by the book Tue 1 Dec 17:00"],
      [WHO.coach, "Kit: no room by the book Tue 1 Dec 17:00"],
      [WHO.guardian, "Kit: no room by the book Thu 3 Dec 17:00"],
      [WHO.coach, "Kit: no room by the book Thu 3 Dec 17:00"],
    ]);
    const seen = await coach.sessions.forStaff({ sessionId: later.sessionId });
    expect(seen.athletes[0]?.now).toMatchObject({
      words: "asks for 20, none by the book now",
      hasRoom: false,
    });
  });

  it("stops all throwing for pain, tells the family and the coach at once, and flags what is booked", async () => {
    const sessionId = await openSession();
    const pain = { kind: "pain" as const, feltOn: "2026-12-01", note: "Inside of the elbow." };
    await (await academy.as(WHO.coach)).sessions.checkIn({
      sessionId,
      athleteId: WHO.child.athleteId,
      throws: [],
      pain,
    });
    expect(await academy.db.select().from(painReport)).toMatchObject([{ kind: "pain", sessionId }]);
    const told = (await academy.db.select().from(notice)).filter((row) => row.kind === "pain_reported");
    expect(told.map((row) => row.toPersonId)).toEqual([WHO.guardian, WHO.coach]);
    await expectRefusal(() => book({ startsAtMs: at("2026-12-20", 1020), siteId: WHO.site }), {
      reason: "site_closed",
    });
    await expectRefusal(() => book({ startsAtMs: at("2026-12-21", 1020) }), { reason: "pain_stop" });
    const seen = await (await academy.as(WHO.coach)).sessions.forStaff({ sessionId });
    expect(seen.athletes[0]?.now?.words).toBe("asks for 20, no throwing now: pain reported");
  });

  it("refuses throws of a day that has not come, and writes nothing", async () => {
    const sessionId = await openSession();
    const throws = [{ thrownOn: "2026-12-02", kind: "game" as const, pitches: 20 }];
    await expectRefusal(
      async () =>
        (await academy.as(WHO.coach)).sessions.checkIn({
          sessionId,
          athleteId: WHO.child.athleteId,
          throws,
          pain: null,
        }),
      { reason: "throw_entry_invalid" },
    );
  });
});
