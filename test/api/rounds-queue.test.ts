import { beforeEach, describe, expect, it } from "vitest";
import { checkpoint } from "@/db/schema/checkpoints";
import { correction } from "@/db/schema/corrections";
import { athlete } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import { round } from "@/db/schema/rounds";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { DUE_MS, HOUR_MS, received, turnedAway } from "../helpers/rounds";

let academy: TestAcademy;
beforeEach(async () => {
  academy = await makeAcademy();
});
const as = (who: string) => academy.as(who);

describe("the queue", () => {
  it("lists what is owed by when it is due, with what is left or how late, and apart what waits for a family", async () => {
    const early = await received(academy);
    academy.clock.ms += 24 * HOUR_MS;
    const stranger = await received(academy, WHO.stranger.athleteId, WHO.otherGuardian);
    const waiting = await received(academy, WHO.teen.athleteId);
    await (await as(WHO.coach)).rounds.take({ roundId: early });
    await (await as(WHO.coach)).rounds.askRetake({ roundId: waiting, reason: "Too dark." });
    academy.clock.ms = DUE_MS + 2 * HOUR_MS;
    const queue = await (await as(WHO.coach)).rounds.queue({});
    expect(queue.owed).toMatchObject([
      {
        roundId: early,
        athleteName: "Kit Marsh",
        ageYears: 12,
        state: "taken",
        kind: "first",
        views: ["open_side"],
        coachName: "Cole Rivers",
        isOwnAthlete: true,
        lateness: { kind: "late", lateByMs: 2 * HOUR_MS },
        estimateMin: 20,
        openCorrections: [],
      },
      { roundId: stranger, coachName: null, isOwnAthlete: false, lateness: { kind: "left" } },
    ]);
    expect(queue.awaited).toMatchObject([{ roundId: waiting, state: "retake", mayBeWithdrawn: true }]);
    expect(queue.coaches.map((coach) => coach.name)).toEqual(["Cole Rivers", "Dana Field"]);
  });

  it("names open corrections, and takes the coach's own median once five reviews say it", async () => {
    const roundId = await received(academy);
    const [point] = await academy.db.select().from(checkpoint).limit(1);
    for (const [index, minutes] of [8, 10, 30, 12, 9].entries()) {
      const past = {
        id: `rnd_${index}`,
        athleteId: WHO.teen.athleteId,
        siteId: WHO.site,
        state: "settled",
      } as const;
      await academy.db.insert(round).values({ ...past, receivedAtMs: 0 });
      const sent = {
        id: `rvw_${index}`,
        roundId: past.id,
        athleteId: WHO.teen.athleteId,
        kind: "review",
      } as const;
      const times = { openedAtMs: 0, sentAtMs: minutes * 60_000 };
      await academy.db.insert(review).values({ ...sent, coachPersonId: WHO.coach, ...times });
    }
    for (const [index, state] of (["given", "held", "showing"] as const).entries()) {
      await academy.db.insert(correction).values({
        id: `cor_${index}`,
        athleteId: WHO.child.athleteId,
        reviewId: "rvw_0",
        roundId: "rnd_0",
        checkpointId: point?.id ?? "",
        phase: "stride",
        cue: "",
        drill: "",
        position: index,
        state,
        givenAtMs: index,
      });
    }
    const { owed } = await (await as(WHO.otherCoach)).rounds.queue({});
    expect(owed).toMatchObject([
      {
        roundId,
        estimateMin: 10,
        openCorrections: [{ checkpointId: point?.id, name: point?.name }, { name: point?.name }],
      },
    ]);
    await academy.db.update(athlete).set({ coachPersonId: WHO.otherCoach });
    expect((await (await as(WHO.coach)).rounds.queue({})).owed[0]?.estimateMin).toBe(20);
  });

  it("is for staff", async () => {
    await turnedAway(academy, [WHO.guardian, WHO.teen.personId, WHO.adult.personId], async (who) =>
      (await as(who)).rounds.queue({}),
    );
    expect((await (await as(WHO.admin)).rounds.queue({})).owed).toEqual([]);
  });
});
