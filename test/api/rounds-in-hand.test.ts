import { beforeEach, describe, expect, it } from "vitest";
import { draft } from "@/db/schema/rounds";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { DUE_MS, received, refused, roundEvents, roundRow, toldOf, turnedAway } from "../helpers/rounds";

let academy: TestAcademy;
beforeEach(async () => {
  academy = await makeAcademy();
});
const as = (who: string) => academy.as(who);

describe("taking a round", () => {
  it("goes to one of two coaches at the same moment, and the other is told who did", async () => {
    const roundId = await received(academy);
    const callers = [await as(WHO.coach), await as(WHO.otherCoach)];
    const results = await Promise.allSettled(callers.map((caller) => caller.rounds.take({ roundId })));
    expect(results.map((result) => result.status)).toEqual(["fulfilled", "rejected"]);
    expect(results[1]).toMatchObject({
      reason: { code: "CONFLICT", cause: { detail: { reason: "round_taken_by", coachName: "Cole Rivers" } } },
    });
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "taken",
      coachPersonId: WHO.coach,
      takenAtMs: academy.clock.ms,
    });
    expect((await roundEvents(academy)).map((event) => event.kind)).toEqual(["received", "taken"]);
    expect(await toldOf(academy, "round_taken")).toEqual([]);
  });

  it("changes nothing when it is one's own already, and tells the athlete's coach when another took it", async () => {
    const roundId = await received(academy);
    await (await as(WHO.otherCoach)).rounds.take({ roundId });
    expect(await toldOf(academy, "round_taken")).toEqual([WHO.coach]);
    const before = academy.snapshot();
    await (await as(WHO.otherCoach)).rounds.take({ roundId });
    expect(academy.snapshot()).toBe(before);
  });

  it("is for coaches alone", async () => {
    const roundId = await received(academy);
    await turnedAway(academy, [WHO.admin, WHO.guardian, WHO.otherGuardian], async (who) =>
      (await as(who)).rounds.take({ roundId }),
    );
    await turnedAway(academy, [WHO.coach], async (who) =>
      (await as(who)).rounds.take({ roundId: "rnd_nothing" }),
    );
  });

  it("is undone by putting it back, by the one who has it", async () => {
    const roundId = await received(academy);
    await (await as(WHO.coach)).rounds.take({ roundId });
    await refused((await as(WHO.otherCoach)).rounds.putBack({ roundId }), "round_taken_by");
    await (await as(WHO.coach)).rounds.putBack({ roundId });
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "received",
      coachPersonId: null,
      dueAtMs: DUE_MS,
    });
    await refused((await as(WHO.coach)).rounds.putBack({ roundId }), "round_state");
    await turnedAway(academy, [WHO.admin, WHO.guardian], async (who) =>
      (await as(who)).rounds.putBack({ roundId }),
    );
  });
});

describe("handing a round over", () => {
  it("moves it with its draft to a coach, who is told, as is the one who had it", async () => {
    const roundId = await received(academy);
    await (await as(WHO.coach)).rounds.take({ roundId });
    const opened = { openedAtMs: 1, savedAtMs: 1, version: 1, document: "{}" };
    await academy.db.insert(draft).values({ roundId, kind: "review", coachPersonId: WHO.coach, ...opened });
    await (await as(WHO.admin)).rounds.handOver({ roundId, coachPersonId: WHO.otherCoach });
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "taken",
      coachPersonId: WHO.otherCoach,
      dueAtMs: DUE_MS,
    });
    expect((await academy.db.select().from(draft))[0]?.coachPersonId).toBe(WHO.otherCoach);
    expect(await toldOf(academy, "round_taken")).toEqual([WHO.otherCoach, WHO.coach]);
    expect((await roundEvents(academy)).at(-1)).toMatchObject({
      kind: "handed_over",
      actorPersonId: WHO.admin,
      toPersonId: WHO.otherCoach,
    });
  });

  it("takes a round nobody had, and leaves one that is theirs already", async () => {
    const roundId = await received(academy);
    await (await as(WHO.coach)).rounds.handOver({ roundId, coachPersonId: WHO.otherCoach });
    expect(await roundRow(academy, roundId)).toMatchObject({ state: "taken", coachPersonId: WHO.otherCoach });
    const before = academy.snapshot();
    await (await as(WHO.coach)).rounds.handOver({ roundId, coachPersonId: WHO.otherCoach });
    expect(academy.snapshot()).toBe(before);
  });

  it("is refused to somebody who does not coach, and for a round that has ended", async () => {
    const roundId = await received(academy);
    const admin = await as(WHO.admin);
    await turnedAway(academy, [WHO.coach], async (who) =>
      (await as(who)).rounds.handOver({ roundId, coachPersonId: WHO.guardian }),
    );
    await turnedAway(academy, [WHO.guardian, WHO.otherGuardian], async (who) =>
      (await as(who)).rounds.handOver({ roundId, coachPersonId: WHO.coach }),
    );
    await admin.rounds.withdraw({ roundId, reason: "sent twice" });
    await refused(admin.rounds.handOver({ roundId, coachPersonId: WHO.coach }), "round_state");
  });
});
