import { beforeAll, describe, expect, it } from "vitest";
import { correctionEvent } from "@/db/schema/corrections";
import { judgement } from "@/db/schema/mechanics";
import { type TestAcademy, WHO } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";

let academy: TestAcademy;
let child: AthleteRecord;

beforeAll(async () => {
  const busy = await makeBusyAcademy();
  academy = busy.academy;
  child = busy.records.child;
});

const seasonAs = async (personId: string, athleteId = child.athleteId) =>
  (await academy.as(personId)).athletes.season({ athleteId });

describe("a season", () => {
  it("holds the rounds, corrections, sessions, outings and throws of one athlete, and nobody else's", async () => {
    const season = await seasonAs(WHO.guardian);
    expect(season.athlete).toMatchObject({ name: "Kit Marsh", ageYears: 12, coachName: "Cole Rivers" });
    expect(season.rounds.map((round) => round.id).sort()).toEqual(Object.values(child.rounds).sort());
    expect(season.corrections.map((correction) => correction.id)).toContain(child.correction);
    expect(season.sessions.map((session) => session.id).sort()).toEqual(
      [child.bookedSession, child.loggedSession, child.runningSession].sort(),
    );
    expect(season.outings.map((outing) => outing.id)).toEqual([child.outing]);
    expect(season.weeks).toHaveLength(53);
    expect(JSON.stringify(season)).not.toMatch(/marker-(teen|adult|stranger)/);
  });

  it("says of a round when it ended, and of one that goes on that it did not", async () => {
    const { rounds } = await seasonAs(WHO.coach);
    const ended = Object.fromEntries(rounds.map((round) => [round.id, round.endedOn]));
    expect(ended[child.rounds.sent]).toBeNull();
    expect(rounds.find((round) => round.id === child.rounds.settled)?.state).toBe("settled");
  });

  it("gives each correction as spans that begin on the day it was given", async () => {
    const { corrections } = await seasonAs(WHO.coach);
    const own = corrections.find((correction) => correction.id === child.correction);
    expect(own?.spans[0]).toMatchObject({ state: "given", fromDay: own?.givenOn });
  });

  it("tells what happened in one instant in the order it was written, as every other screen does", async () => {
    await academy.discarding(async () => {
      const step = { correctionId: child.correction, actorPersonId: WHO.coach, atMs: academy.clock.ms };
      await academy.db.insert(correctionEvent).values([
        { ...step, id: "cev_z", kind: "confirmed" },
        { ...step, id: "cev_a", kind: "not_yet" },
      ]);
      const { corrections } = await seasonAs(WHO.coach);
      const home = await (await academy.as(WHO.guardian)).today.family({ athleteId: child.athleteId });
      for (const shown of [corrections, home.corrections]) {
        const own = shown.find((correction) => correction.id === child.correction);
        expect(own).toMatchObject({ state: "given", cameBack: true });
      }
    });
  });

  it("lists judgements by checkpoint in the order of their days, on clips and in person", async () => {
    const checkpointId = await anyCheckpoint();
    const row = { athleteId: WHO.adult.athleteId, checkpointId, coachPersonId: WHO.coach };
    await academy.db.insert(judgement).values([
      {
        ...row,
        id: "j1",
        score: 1,
        judgedOn: "2026-11-02",
        atMs: 1,
        view: "front",
      },
      { ...row, id: "j2", score: 3, judgedOn: "2026-11-20", atMs: 2 },
    ]);
    const { judged } = await seasonAs(WHO.adult.personId, WHO.adult.athleteId);
    const own = judged.find((checkpoint) => checkpoint.checkpointId === checkpointId);
    expect(own?.judgements.filter(({ id }) => ["j1", "j2"].includes(id))).toMatchObject([
      { judgedOn: "2026-11-02", score: 1, view: "front", coachName: "Cole Rivers" },
      { judgedOn: "2026-11-20", score: 3, view: null },
    ]);
  });

  it("is the same for coach, athlete and guardian, and there for nobody else", async () => {
    const athleteId = WHO.teen.athleteId;
    const asCoach = await seasonAs(WHO.coach, athleteId);
    expect(await seasonAs(WHO.teen.personId, athleteId)).toEqual(asCoach);
    const asGuardian = await seasonAs(WHO.guardian, athleteId);
    expect({ ...asGuardian, pain: asCoach.pain }).toEqual(asCoach);
    for (const personId of [WHO.otherGuardian, WHO.adult.personId]) {
      await expect(seasonAs(personId, athleteId)).rejects.toMatchObject({ code: "NOT_FOUND" });
    }
    await expect(seasonAs(WHO.coach, "ath_nobody")).rejects.toMatchObject({ code: "NOT_FOUND" });
  });
});

describe("the guardians of an athlete", () => {
  it("are told to staff with how to reach them, and to no family", async () => {
    const { athleteId } = child;
    const guardians = await (await academy.as(WHO.otherCoach)).athletes.guardians({ athleteId });
    expect(guardians).toMatchObject([{ personId: WHO.guardian, name: "Gwen Marsh", phone: null }]);
    for (const personId of [WHO.guardian, WHO.otherGuardian, WHO.teen.personId]) {
      const caller = await academy.as(personId);
      await expect(caller.athletes.guardians({ athleteId })).rejects.toMatchObject({ code: "NOT_FOUND" });
    }
  });
});

describe("the list of athletes", () => {
  it("shows staff every athlete by family name, with how the arm stands today", async () => {
    const { athletes, myPersonId } = await (await academy.as(WHO.coach)).athletes.list({});
    expect(myPersonId).toBe(WHO.coach);
    expect(athletes.map((row) => row.name)).toEqual(["Kit Marsh", "Robin Marsh", "Pip Stone", "Sam Vale"]);
    expect(athletes[0]?.arm.words).toMatch(/by the book$/);
    expect(athletes[0]?.openCorrections).toBeGreaterThan(0);
  });

  it("is found by part of a name, whatever its case; a blank text finds nobody", async () => {
    const coach = await academy.as(WHO.coach);
    expect((await coach.athletes.search({ text: "MARSH" })).map((row) => row.name)).toEqual([
      "Kit Marsh",
      "Robin Marsh",
    ]);
    expect(await coach.athletes.search({ text: "  " })).toEqual([]);
    expect(await coach.athletes.search({ text: "%" })).toEqual([]);
  });

  it("is for staff alone", async () => {
    for (const personId of [WHO.guardian, WHO.adult.personId]) {
      const caller = await academy.as(personId);
      await expect(caller.athletes.list({})).rejects.toMatchObject({ code: "NOT_FOUND" });
      await expect(caller.athletes.search({ text: "kit" })).rejects.toMatchObject({ code: "NOT_FOUND" });
    }
  });
});

async function anyCheckpoint(): Promise<string> {
  const row = academy.sqlite.prepare("SELECT id FROM checkpoint ORDER BY position LIMIT 1").get();
  return (row as { id: string }).id;
}
