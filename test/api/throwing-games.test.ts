import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { painReport, throwEntry } from "@/db/schema/throwing";
import { instantOf } from "@/server/domain/time/calendar-day";
import { makeAcademy, WHO, ZONE } from "../helpers/academy";
import { refused } from "../helpers/refuses";
import { bookBullpen, told } from "../helpers/throwing-desk";

const CHILD = WHO.child.athleteId;
const TODAY = "2026-11-25";
const GAME = { athleteId: CHILD, thrownOn: TODAY, kind: "game", pitches: 41 } as const;
const SAID = {
  outs: 7,
  inningsCaught: 2,
  pitchesAtLastBatter: 36,
  intentionalWalks: 1,
  teamId: null,
  opponent: "Lakeside",
} as const;
const PAIN = { kind: "pain", feltOn: TODAY, note: "Inside of the elbow" } as const;

/** The academy with a team of the child and one of another family's. */
async function withTeams() {
  const academy = await makeAcademy();
  const guardian = await academy.as(WHO.guardian);
  const ruleBookId = "usa-baseball-2018";
  const own = await guardian.teams.add({ athleteId: CHILD, name: "River Nine", ruleBookId });
  const stranger = await academy.as(WHO.otherGuardian);
  const { athleteId } = WHO.stranger;
  const foreign = await stranger.teams.add({ athleteId, name: "Hill Club", ruleBookId });
  return { academy, guardian, own: own.teamId, foreign: foreign.teamId };
}

describe("logging a game", () => {
  it("keeps outs, catching, the last batter, walks, team and opponent, and shows them", async () => {
    const { academy, guardian, own } = await withTeams();
    const { entryId } = await guardian.throwing.log({ ...GAME, game: { ...SAID, teamId: own } });
    const { opponent: _, ...kept } = { ...SAID, teamId: own };
    expect(await academy.db.select().from(throwEntry)).toMatchObject([{ id: entryId, ...kept }]);
    const { log } = await guardian.throwing.view({ athleteId: CHILD });
    expect(log).toMatchObject([{ ...SAID, teamId: own, teamName: "River Nine", opponent: "Lakeside" }]);
  });

  it("needs none of it: nothing said is kept as nothing said", async () => {
    const { academy, guardian } = await withTeams();
    await guardian.throwing.log(GAME);
    expect(await academy.db.select().from(throwEntry)).toMatchObject([
      { outs: null, inningsCaught: null, pitchesAtLastBatter: null, intentionalWalks: 0, teamId: null },
    ]);
  });

  it.each([
    ["too many outs", { outs: 61 }, "More than 20 innings pitched in one entry looks like a slip"],
    ["ten thousand innings caught", { inningsCaught: 9999 }, "More than 20 innings caught"],
    [
      "a last batter after the last pitch",
      { pitchesAtLastBatter: 42 },
      "The last batter cannot have come up",
    ],
    ["too many walks", { intentionalWalks: 21 }, "More than 20 intentional walks"],
    ["a team that is not there", { teamId: "tea_none" }, "That is not a team of this athlete."],
  ])("with %s is refused with a sentence, and nothing is written", async (_, change, sentence) => {
    const { academy, guardian } = await withTeams();
    await refused(academy, () => guardian.throwing.log({ ...GAME, game: { ...SAID, ...change } }), {
      code: "UNPROCESSABLE_CONTENT",
      message: expect.stringContaining(sentence),
    });
  });

  it("for another family's team is refused like one that is not there", async () => {
    const { academy, guardian, foreign } = await withTeams();
    await refused(academy, () => guardian.throwing.log({ ...GAME, game: { ...SAID, teamId: foreign } }), {
      message: "That is not a team of this athlete. Nothing was logged.",
    });
  });

  it("takes no innings for a bullpen", async () => {
    const { academy, guardian } = await withTeams();
    await refused(academy, () => guardian.throwing.log({ ...GAME, kind: "bullpen", game: SAID }), {
      message: "Innings, walks and a team belong to a game. Nothing was logged.",
    });
  });

  it.each([
    ["outs below none", { outs: -1 }],
    ["a broken count", { pitchesAtLastBatter: 3.5 }],
    ["an opponent of a page", { opponent: "x".repeat(81) }],
    ["a field too many", { score: 3 }],
  ])("with %s is a bad request, and nothing is written", async (_, change) => {
    const { academy, guardian } = await withTeams();
    await refused(academy, () => guardian.throwing.log({ ...GAME, game: { ...SAID, ...change } }), {
      code: "BAD_REQUEST",
    });
  });

  it.each([
    [-1, "Pitches cannot be below 0."],
    [10_000, "More than 400 pitches in one entry looks like a slip: check the number."],
    [10.5, "Pitches are a whole number."],
  ])("of %d pitches says what is wrong", async (pitches, sentence) => {
    const { academy, guardian } = await withTeams();
    await refused(academy, () => guardian.throwing.log({ ...GAME, pitches }), {
      message: expect.stringContaining(JSON.stringify(sentence).slice(1, -1)),
    });
  });
});

describe("pain told with a game", () => {
  it("stops the arm in the same step, is told of, and names the bookings that throw", async () => {
    const academy = await makeAcademy();
    await bookBullpen(academy, "2026-11-30");
    const guardian = await academy.as(WHO.guardian);
    const { arm } = await guardian.throwing.log({ ...GAME, game: SAID, pain: PAIN });
    expect(arm.marks).toContainEqual(expect.objectContaining({ kind: "pain" }));
    expect(await academy.db.select().from(painReport)).toMatchObject([{ athleteId: CHILD, feltOn: TODAY }]);
    expect(await told(academy, "pain_reported")).toEqual([WHO.coach, WHO.guardian]);
    expect(await told(academy, "session_without_room")).toEqual([WHO.coach, WHO.guardian]);
  });

  it.each([
    ["felt tomorrow", GAME, { ...PAIN, feltOn: "2026-11-26" }],
    ["told with a game of tomorrow", { ...GAME, thrownOn: "2026-11-26" }, PAIN],
    ["felt before birth", GAME, { ...PAIN, feltOn: "2014-05-09" }],
  ])("%s is refused with the game, and neither is written", async (_, game, pain) => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await refused(academy, () => guardian.throwing.log({ ...game, pain }), { code: "UNPROCESSABLE_CONTENT" });
  });
});

describe("throws that a device kept", () => {
  const KEPT = { ...GAME, game: SAID, pain: PAIN, keptId: "11111111-1111-4111-8111-111111111111" };

  it("are on the log once, however often and however late they come, and so is their pain", async () => {
    const academy = await makeAcademy();
    const once = await (await academy.as(WHO.guardian, "request")).throwing.log(KEPT);
    const before = academy.snapshot();
    const again = await (await academy.as(WHO.guardian, "request")).throwing.log(KEPT);
    expect(again).toEqual(once);
    expect(academy.snapshot()).toBe(before);
    academy.clock.ms += 30 * 86_400_000;
    const late = await (await academy.as(WHO.guardian)).throwing.log(KEPT);
    expect(late.entryId).toBe(once.entryId);
    expect(academy.snapshot()).toBe(before);
  });

  it("stay corrected when they come again", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const { entryId } = await guardian.throwing.log({ ...KEPT, pain: null });
    await guardian.throwing.correct({ entryId, thrownOn: TODAY, kind: "game", pitches: 12 });
    const before = academy.snapshot();
    await guardian.throwing.log({ ...KEPT, pain: null });
    expect(academy.snapshot()).toBe(before);
  });

  it("of one athlete do not hide those of another", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await guardian.throwing.log(KEPT);
    await guardian.throwing.log({ ...KEPT, athleteId: WHO.teen.athleteId });
    expect(await academy.db.select().from(throwEntry)).toHaveLength(2);
  });
});

describe("correcting a game", () => {
  it("carries every field, and takes out what is no longer said", async () => {
    const { academy, guardian, own } = await withTeams();
    const { entryId } = await guardian.throwing.log({ ...GAME, game: { ...SAID, teamId: own } });
    const game = { ...SAID, outs: 8, pitchesAtLastBatter: null, opponent: "", teamId: null };
    const { athleteId: _, ...thrown } = GAME;
    await guardian.throwing.correct({ entryId, ...thrown, game });
    const [row] = await academy.db.select().from(throwEntry).where(eq(throwEntry.replacesId, entryId));
    expect(row).toMatchObject({ outs: 8, pitchesAtLastBatter: null, opponentRemarkId: null, teamId: null });
  });

  it("keeps the team whose time has ended, and is refused for another family's", async () => {
    const { academy, guardian, own, foreign } = await withTeams();
    const { entryId } = await guardian.throwing.log({ ...GAME, game: { ...SAID, teamId: own } });
    await guardian.teams.end({ teamId: own });
    const { athleteId: _, ...thrown } = GAME;
    const correct = (teamId: string) =>
      guardian.throwing.correct({ entryId, ...thrown, game: { ...SAID, teamId } });
    await refused(academy, () => correct(foreign), { code: "UNPROCESSABLE_CONTENT" });
    await expect(correct(own)).resolves.toBeDefined();
  });
});

describe("a game that is told at a check-in", () => {
  it("takes what a game says, and writes nothing at all when that cannot be", async () => {
    const { academy, own, foreign } = await withTeams();
    await bookBullpen(academy, TODAY);
    academy.clock.ms = instantOf(TODAY, 17 * 60 + 5, ZONE);
    const coach = await academy.as(WHO.coach);
    const asked = (teamId: string) =>
      coach.sessions.checkIn({
        ...{ sessionId: "ses_bullpen", athleteId: CHILD, pain: null },
        throws: [
          { thrownOn: "2026-11-20", kind: "game", pitches: 20 },
          { thrownOn: "2026-11-21", kind: "game", pitches: 36, game: { ...SAID, teamId } },
        ],
      });
    await refused(academy, () => asked(foreign), { code: "UNPROCESSABLE_CONTENT" });
    await asked(own);
    const rows = await academy.db.select().from(throwEntry).where(eq(throwEntry.teamId, own));
    expect(rows).toMatchObject([{ outs: 7, inningsCaught: 2, pitchesAtLastBatter: 36 }]);
  });
});

describe("an outing for a team", () => {
  it("says for which, and is refused for one that has ended or is another's", async () => {
    const { academy, guardian, own, foreign } = await withTeams();
    const plan = { athleteId: CHILD, plannedOn: "2026-11-28", pitches: 40 };
    await guardian.throwing.planOuting({ ...plan, teamId: own });
    const { outings } = await guardian.throwing.view({ athleteId: CHILD });
    expect(outings).toMatchObject([{ teamId: own, teamName: "River Nine" }]);
    await refused(academy, () => guardian.throwing.planOuting({ ...plan, teamId: foreign }), {
      message: "That is not a team of this athlete. Nothing was logged.",
    });
    await guardian.teams.end({ teamId: own });
    await refused(academy, () => guardian.throwing.planOuting({ ...plan, teamId: own }), {
      message: "The time with River Nine has ended: choose another team. Nothing was logged.",
    });
  });
});
