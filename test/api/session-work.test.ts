import { beforeEach, describe, expect, it } from "vitest";
import { sessionWork } from "@/db/schema/sessions";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { at, expectRefused } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const expectRefusal = (call: () => Promise<unknown>, detail: object) => expectRefused(academy, call, detail);

describe("a correction confirmed in person", () => {
  it("holds at once, and settles the round that waited for a reply when nothing else is open", async () => {
    const busy = await makeBusyAcademy();
    academy = busy.academy;
    const { child } = busy.records;
    const coach = await academy.as(WHO.coach);
    academy.clock.ms = at("2026-11-25", 870);
    const plan = await coach.sessions.planning({ athleteIds: [child.athleteId], roundId: null });
    const open = plan.athletes[0]?.corrections.map((each) => each.correctionId) ?? [];
    expect(open.length).toBeGreaterThan(0);
    const now = await academy.as(WHO.coach);
    await now.sessions.checkIn({
      sessionId: child.runningSession,
      athleteId: child.athleteId,
      throws: [],
      pain: null,
    });
    const work = open.map((correctionId) => ({ correctionId, outcome: "confirmed" as const }));
    const line = {
      athleteId: child.athleteId,
      attendance: "came" as const,
      minutes: 15,
      pitches: 10,
      work,
      note: "",
    };
    await now.sessions.log({ sessionId: child.runningSession, version: 2, lines: [line] });
    expect(await academy.db.select().from(sessionWork)).toHaveLength(open.length);
    const after = await now.sessions.planning({ athleteIds: [child.athleteId], roundId: null });
    expect(after.athletes[0]?.corrections).toEqual([]);
    const rounds = academy.sqlite.prepare("SELECT state FROM round WHERE id = ?").get(child.rounds.sent);
    expect(rounds).toEqual({ state: "settled" });
    const events = academy.sqlite
      .prepare("SELECT count(*) AS n FROM correction_event WHERE kind = 'confirmed' AND session_id = ?")
      .get(child.runningSession);
    expect(events).toEqual({ n: open.length });
  });

  it("refuses a correction of somebody else and writes nothing", async () => {
    const busy = await makeBusyAcademy();
    academy = busy.academy;
    const { child, stranger } = busy.records;
    academy.clock.ms = at("2026-11-25", 870);
    const coach = await academy.as(WHO.coach);
    await coach.sessions.checkIn({
      sessionId: child.runningSession,
      athleteId: child.athleteId,
      throws: [],
      pain: null,
    });
    const work = [{ correctionId: stranger.correction, outcome: "confirmed" as const }];
    const line = {
      athleteId: child.athleteId,
      attendance: "came" as const,
      minutes: 15,
      pitches: 10,
      work,
      note: "",
    };
    await expectRefusal(
      () => coach.sessions.log({ sessionId: child.runningSession, version: 2, lines: [line] }),
      { reason: "not_found" },
    );
  });
});
