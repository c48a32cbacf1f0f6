import { describe, expect, it } from "vitest";
import { athleteTeam } from "@/db/schema/throwing";
import { makeAcademy, WHO } from "../helpers/academy";
import { refused } from "../helpers/refuses";

const CHILD = WHO.child.athleteId;
const TEAM = { athleteId: CHILD, name: " River Nine ", ruleBookId: "usa-baseball-2018" };

describe("the teams of an athlete", () => {
  it("are added with their book, shown, and ended without going from the record", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const { teamId } = await guardian.teams.add(TEAM);
    const { teams } = await guardian.throwing.view({ athleteId: CHILD });
    expect(teams.mayManage).toBe(true);
    expect(teams.books.map((book) => book.id)).toContain("usa-baseball-2018");
    expect(teams.teams).toEqual([
      { id: teamId, name: "River Nine", hasEnded: false, bookName: expect.stringMatching(/\w/) },
    ]);
    await guardian.teams.end({ teamId });
    expect((await guardian.throwing.view({ athleteId: CHILD })).teams.teams).toMatchObject([
      { id: teamId, hasEnded: true },
    ]);
    const [row] = await academy.db.select().from(athleteTeam);
    academy.clock.ms += 60_000;
    await (await academy.as(WHO.guardian)).teams.end({ teamId });
    expect(await academy.db.select().from(athleteTeam)).toEqual([row]);
  });

  it.each([
    ["without a name", { name: "  " }, "Name the team or league."],
    ["by a book that is not there", { ruleBookId: "none" }, "Choose a rule book from the list."],
    ["twice", { name: "river nine" }, "river nine is on the list already."],
  ])("are not added %s, and nothing is written", async (_, change, sentence) => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await guardian.teams.add(TEAM);
    await refused(academy, () => guardian.teams.add({ ...TEAM, name: "Another", ...change }), {
      message: `${sentence} Nothing was saved.`,
    });
  });

  it("are managed by those who decide for the athlete and by staff, and seen by the athlete too", async () => {
    const academy = await makeAcademy();
    for (const personId of [WHO.coach, WHO.otherCoach, WHO.admin, WHO.guardian]) {
      const { teamId } = await (await academy.as(personId)).teams.add({ ...TEAM, name: personId });
      await (await academy.as(personId)).teams.end({ teamId });
    }
    const teen = await academy.as(WHO.teen.personId);
    const ofTeen = { ...TEAM, athleteId: WHO.teen.athleteId };
    await refused(academy, () => teen.teams.add(ofTeen), { code: "NOT_FOUND" });
    const { teamId } = await (await academy.as(WHO.guardian)).teams.add(ofTeen);
    await refused(academy, () => teen.teams.end({ teamId }), { code: "NOT_FOUND" });
    const { teams } = await teen.throwing.view({ athleteId: WHO.teen.athleteId });
    expect(teams).toMatchObject({ mayManage: false, books: [], teams: [{ name: "River Nine" }] });
    const stranger = await academy.as(WHO.otherGuardian);
    await refused(academy, () => stranger.teams.end({ teamId }), { code: "NOT_FOUND" });
    await refused(academy, () => stranger.teams.add(TEAM), { code: "NOT_FOUND" });
  });
});
