import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { remark } from "@/db/schema/people";
import { round } from "@/db/schema/rounds";
import { painClearance, painReport } from "@/db/schema/throwing";
import { lapseRounds } from "@/server/jobs/lapse-rounds";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { addWaitingClip, allClips, said } from "../helpers/clips";
import {
  DUE_MS,
  HOUR_MS,
  received,
  refused,
  roundEvents,
  roundRow,
  toldOf,
  turnedAway,
} from "../helpers/rounds";

let academy: TestAcademy;
beforeEach(async () => {
  academy = await makeAcademy();
});
const as = (who: string) => academy.as(who);

describe("asking for a retake", () => {
  it("stops the promise's clock, asks from the arm's free day on, and the new clip resumes what was left", async () => {
    const roundId = await received(academy);
    await (await as(WHO.coach)).rounds.take({ roundId });
    /* Thu 26 Nov 19:00: 2 h of Thursday and the 7 h of Friday are left of the promise. */
    academy.clock.ms = Date.UTC(2026, 10, 27, 0);
    await (await as(WHO.coach)).rounds.askRetake({
      roundId,
      reason: "The front foot is out of the picture.",
    });
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "retake",
      retakeFrom: "taken",
      dueAtMs: null,
      pausedOpenMs: 9 * HOUR_MS,
      replyFrom: "2026-11-26",
      lapsesOn: "2026-12-18",
    });
    const [told] = await academy.db.select().from(notice).where(eq(notice.kind, "retake_asked"));
    expect(told).toMatchObject({ toPersonId: WHO.guardian });
    expect(told?.body).toContain("The front foot is out of the picture.");
    /* Tue 1 Dec 18:00: 3 h left that day, 6 h of Wednesday from 14:00 make 20:00. */
    academy.clock.ms = Date.UTC(2026, 11, 1, 23);
    const clipId = await addWaitingClip(academy, WHO.child.athleteId, WHO.guardian);
    const clips = [said(clipId, { filmedOn: "2026-12-01" })];
    const again = { athleteId: WHO.child.athleteId, roundId, clips };
    const answer = await (await as(WHO.guardian)).rounds.send(again);
    expect(answer.dueAtMs).toBe(Date.UTC(2026, 11, 3, 1));
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "taken",
      pausedOpenMs: null,
      retakeFrom: null,
      coachPersonId: WHO.coach,
    });
    expect((await allClips(academy)).map((clip) => [clip.state, clip.part])).toEqual([
      ["replaced", "first"],
      ["ready", "first"],
    ]);
    expect((await roundEvents(academy)).map((event) => event.kind)).toEqual([
      "received",
      "taken",
      "retake_asked",
      "clip_replaced",
    ]);
  });

  it("keeps a promise that was missed as late as it was", async () => {
    const roundId = await received(academy);
    academy.clock.ms = DUE_MS + 5 * HOUR_MS;
    await (await as(WHO.coach)).rounds.askRetake({ roundId, reason: "Too dark to see." });
    expect((await roundRow(academy, roundId))?.pausedOpenMs).toBe(-5 * HOUR_MS);
    academy.clock.ms += 100 * HOUR_MS;
    const clipId = await addWaitingClip(academy, WHO.child.athleteId, WHO.guardian);
    const input = { athleteId: WHO.child.athleteId, roundId, clips: [said(clipId)] };
    const { dueAtMs } = await (await as(WHO.guardian)).rounds.send(input);
    expect(academy.clock.ms - dueAtMs).toBe(5 * HOUR_MS);
  });

  it("of a reply replaces the reply and not the first clip", async () => {
    const roundId = await received(academy);
    await academy.db.update(round).set({ state: "sent", coachPersonId: WHO.coach, dueAtMs: null });
    for (const step of ["reply", "retake"]) {
      const clipId = await addWaitingClip(academy, WHO.child.athleteId, WHO.guardian);
      const input = { athleteId: WHO.child.athleteId, roundId, clips: [said(clipId)] };
      await (await as(WHO.guardian)).rounds.send(input);
      if (step === "reply")
        await (await as(WHO.coach)).rounds.askRetake({ roundId, reason: "Cut off at the release." });
    }
    expect((await allClips(academy)).map((clip) => `${clip.part} ${clip.state}`)).toEqual([
      "first ready",
      "reply replaced",
      "reply ready",
    ]);
    expect((await roundRow(academy, roundId))?.state).toBe("answered");
  });

  it("asks for nothing while pain stops the arm, and from the day after it was cleared for the academy's span", async () => {
    const roundId = await received(academy);
    const pain = { athleteId: WHO.child.athleteId, reportedByPersonId: WHO.guardian, kind: "pain" } as const;
    const at = academy.clock.ms;
    await academy.db
      .insert(painReport)
      .values({ id: "pai_1", ...pain, feltOn: "2026-11-24", reportedAtMs: at });
    await (await as(WHO.coach)).rounds.askRetake({ roundId, reason: "Too far away." });
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "retake",
      replyFrom: null,
      lapsesOn: null,
    });
    academy.clock.ms += 60 * 24 * HOUR_MS;
    await lapseRounds(academy.connections, academy.clock.ms);
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "retake",
      replyFrom: null,
      lapsesOn: null,
    });
    await academy.db.insert(remark).values({ id: "rmk_1", text: "Dr Hale" });
    await academy.db.insert(painClearance).values({
      id: "pcl_1",
      athleteId: WHO.child.athleteId,
      symptomFreeSince: "2027-01-20",
      examinedByRemarkId: "rmk_1",
      clearedByPersonId: WHO.guardian,
      clearedAtMs: academy.clock.ms,
    });
    await lapseRounds(academy.connections, academy.clock.ms + 1);
    expect(await roundRow(academy, roundId)).toMatchObject({
      state: "retake",
      replyFrom: "2027-01-24",
      lapsesOn: "2027-02-15",
    });
  });

  it("is refused without a reason, to another coach, and to everybody who does not coach", async () => {
    const roundId = await received(academy);
    await (await as(WHO.coach)).rounds.take({ roundId });
    const before = academy.snapshot();
    await expect((await as(WHO.coach)).rounds.askRetake({ roundId, reason: "  " })).rejects.toMatchObject({
      code: "BAD_REQUEST",
    });
    await refused(
      (await as(WHO.otherCoach)).rounds.askRetake({ roundId, reason: "Too dark." }),
      "round_taken_by",
    );
    expect(academy.snapshot()).toBe(before);
    await turnedAway(academy, [WHO.admin, WHO.guardian, WHO.otherGuardian], async (who) =>
      (await as(who)).rounds.askRetake({ roundId, reason: "Too dark." }),
    );
  });
});

describe("withdrawing a round", () => {
  it("ends it with the reason, and tells the other side", async () => {
    const roundId = await received(academy);
    await (await as(WHO.otherCoach)).rounds.take({ roundId });
    await (await as(WHO.guardian)).rounds.withdraw({ roundId, reason: "The wrong athlete." });
    expect(await roundRow(academy, roundId)).toMatchObject({ state: "withdrawn", dueAtMs: null });
    expect(await toldOf(academy, "round_withdrawn")).toEqual([WHO.guardian, WHO.otherCoach]);
    const again = (await as(WHO.guardian)).rounds.withdraw({ roundId, reason: "Once more." });
    await refused(again, "round_state");
  });

  it("is refused once the review is out, and to those who may not decide", async () => {
    const roundId = await received(academy, WHO.teen.athleteId);
    await turnedAway(academy, [WHO.teen.personId, WHO.otherGuardian], async (who) =>
      (await as(who)).rounds.withdraw({ roundId, reason: "No more." }),
    );
    await academy.db.update(round).set({ state: "sent", dueAtMs: null });
    await refused((await as(WHO.guardian)).rounds.withdraw({ roundId, reason: "No more." }), "round_state");
  });
});

describe("a round without an answer", () => {
  it("lapses at the start of its day at the home site, with a word to the family, and not before", async () => {
    const roundId = await received(academy);
    await academy.db
      .update(round)
      .set({ state: "sent", dueAtMs: null, replyFrom: "2026-11-27", lapsesOn: "2026-12-18" });
    /* 23:59 on Thu 17 Dec in New York, already Friday by UTC. */
    await lapseRounds(academy.connections, Date.UTC(2026, 11, 18, 4, 59));
    expect((await roundRow(academy, roundId))?.state).toBe("sent");
    await lapseRounds(academy.connections, Date.UTC(2026, 11, 18, 5, 0));
    expect((await roundRow(academy, roundId))?.state).toBe("lapsed");
    expect((await roundEvents(academy)).at(-1)).toMatchObject({
      kind: "lapsed",
      actorPersonId: null,
    });
    expect(await toldOf(academy, "round_lapsed")).toEqual([WHO.guardian]);
    const before = academy.snapshot();
    await lapseRounds(academy.connections, Date.UTC(2026, 11, 19, 5));
    expect(academy.snapshot()).toBe(before);
  });

  it("lapses from a retake too", async () => {
    const roundId = await received(academy);
    await (await as(WHO.coach)).rounds.askRetake({ roundId, reason: "Too dark." });
    await lapseRounds(academy.connections, Date.UTC(2027, 0, 10));
    expect(await roundRow(academy, roundId)).toMatchObject({ state: "lapsed", pausedOpenMs: null });
  });
});
