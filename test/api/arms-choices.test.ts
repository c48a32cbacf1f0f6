import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { athlete } from "@/db/schema/people";
import { athleteTeam, painReport } from "@/db/schema/throwing";
import { saveBookVersion } from "@/server/data/rule-books";
import { ownCopy } from "@/server/domain/rule-books/own-book";
import { decodeCells } from "@/server/domain/throwing/board-cell";
import { SHIPPED_BOOKS } from "@/server/domain/throwing/shipped-books";
import { daysBetween } from "@/server/domain/time/calendar-day";
import { addAthlete, makeAcademy, type TestAcademy, WHO } from "../helpers/academy";

const EVERYTHING = { coach: null, team: null, site: null, order: "name", page: 1 } as const;
const CHILD = WHO.child.athleteId;

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const boardAs = async (personId: string, input: object = {}) =>
  (await academy.as(personId)).arms.board({ ...EVERYTHING, ...input });

const logGame = async (thrownOn: string, pitches: number) =>
  (await academy.as(WHO.guardian)).throwing.log({ athleteId: CHILD, thrownOn, kind: "game", pitches });

describe("a board that is narrowed", () => {
  const names = async (input: object) => (await boardAs(WHO.admin, input)).rows.map((row) => row.name);

  it("to a coach holds that coach's athletes", async () => {
    expect(await names({ coach: WHO.otherCoach })).toEqual(["Pip Stone"]);
  });

  it("to a team holds those who are on it now, and offers no team that has ended", async () => {
    const team = { ruleBookId: "usa-baseball-2018", addedByPersonId: WHO.guardian, addedAtMs: 0 };
    await academy.db.insert(athleteTeam).values([
      { ...team, id: "team_1", athleteId: CHILD, name: "Herons" },
      { ...team, id: "team_2", athleteId: WHO.stranger.athleteId, name: "Herons" },
      { ...team, id: "team_3", athleteId: WHO.teen.athleteId, name: "Herons", endedAtMs: 1 },
      { ...team, id: "team_4", athleteId: WHO.teen.athleteId, name: "Otters", endedAtMs: 1 },
    ]);
    expect(await names({ team: "Herons" })).toEqual(["Kit Marsh", "Pip Stone"]);
    expect((await boardAs(WHO.admin)).teams).toEqual(["Herons"]);
  });

  it("to a site holds those whose home it is, and to one that is not there nobody", async () => {
    expect(await names({ site: WHO.site })).toHaveLength(4);
    expect(await names({ site: "site_nowhere" })).toEqual([]);
  });
});

describe("a book that adds up more days than others look back", () => {
  it("is read as far back as it looks, for the arms that go by it", async () => {
    const total = {
      ...{ kind: "total" as const, level: "limit" as const, unit: "pitches" as const, over: { days: 120 } },
      ...{ effectiveFrom: "2018-01-01", effectiveUntil: null, source: "The academy" },
      ageBands: [{ ageMin: 7, ageMax: 22, most: 100 }],
    };
    const [shipped] = SHIPPED_BOOKS;
    if (!shipped) throw new Error("No book ships.");
    const book = {
      ...ownCopy(shipped, { id: "rbk_far", name: "Over 120 days" }),
      rules: [...shipped.rules, total],
    };
    const saved = { read: 0, basedOnId: shipped.id, savedByPersonId: WHO.admin, savedAtMs: 0 };
    await saveBookVersion(academy.db, { book, isArchived: false }, saved);
    await logGame("2026-08-10", 60);
    const limitToday = async () => {
      const { rows, fromDay } = await boardAs(WHO.coach);
      const cells = decodeCells(rows.find((row) => row.athleteId === CHILD)?.cells ?? "");
      return cells[daysBetween(fromDay, "2026-11-25")]?.limit;
    };
    expect(await limitToday()).toBe(85);
    await academy.db.update(athlete).set({ ruleBookId: book.id }).where(eq(athlete.id, CHILD));
    expect(await limitToday()).toBe(40);
    const { marks } = await (await academy.as(WHO.coach)).arms.cell({ athleteId: CHILD, day: "2026-11-25" });
    expect(marks[0]?.count).toBe(40);
  });
});

describe("the order and the pages", () => {
  it("put the soonest limit first: pain, then rest today, then the next day without room", async () => {
    await logGame("2026-11-24", 51);
    await academy.db.insert(painReport).values({
      id: "pan_1",
      athleteId: WHO.adult.athleteId,
      kind: "unusual_fatigue",
      feltOn: "2026-11-24",
      reportedByPersonId: WHO.adult.personId,
      reportedAtMs: academy.clock.ms,
    });
    await (await academy.as(WHO.otherGuardian)).throwing.planOuting({
      athleteId: WHO.stranger.athleteId,
      plannedOn: "2026-11-28",
      pitches: 60,
    });
    const { rows } = await boardAs(WHO.coach, { order: "limit" });
    expect(rows.map((row) => row.name)).toEqual(["Sam Vale", "Kit Marsh", "Pip Stone", "Robin Marsh"]);
  });

  it("hold every arm once, and a page beyond the last is the last", async () => {
    for (let each = 0; each < 50; each += 1) {
      const ids = { athleteId: `ath_more_${each}`, personId: `per_more_${each}` };
      await addAthlete(academy.db, ids, `Given${each}`, "Zell", "2012-01-01", "right", WHO.coach, null);
    }
    const first = await boardAs(WHO.coach);
    const second = await boardAs(WHO.coach, { page: 2 });
    expect([first.total, first.rows.length, second.rows.length]).toEqual([54, 40, 14]);
    const ids = [...first.rows, ...second.rows].map((row) => row.athleteId);
    expect(new Set(ids).size).toBe(54);
    expect((await boardAs(WHO.coach, { page: 9 })).rows).toEqual(second.rows);
  });
});
