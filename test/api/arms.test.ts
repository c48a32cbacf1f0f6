import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { athlete } from "@/db/schema/people";
import { painClearance, painReport } from "@/db/schema/throwing";
import { armsOf } from "@/server/data/arms";
import { keepRemark } from "@/server/data/remarks";
import { type BoardCell, decodeCells } from "@/server/domain/throwing/board-cell";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { addDays } from "@/server/domain/time/calendar-day";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { because, refused } from "../helpers/refuses";
import { bookBullpen } from "../helpers/throwing-desk";

const EVERYTHING = { coach: null, team: null, site: null, order: "name", page: 1 } as const;
const CHILD = WHO.child.athleteId;

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const boardAs = async (personId: string, input: object = {}) =>
  (await academy.as(personId)).arms.board({ ...EVERYTHING, ...input });

const cellAs = async (personId: string, athleteId: string, day: string) =>
  (await academy.as(personId)).arms.cell({ athleteId, day });

/** The days of one athlete on the coach's board, by day. */
async function daysOf(athleteId: string): Promise<Map<string, BoardCell>> {
  const board = await boardAs(WHO.coach);
  const row = board.rows.find((each) => each.athleteId === athleteId);
  const cells = decodeCells(row?.cells ?? "");
  return new Map(cells.map((cell, index) => [addDays(board.fromDay, index), cell]));
}

const logGame = async (thrownOn: string, pitches: number) =>
  (await academy.as(WHO.guardian)).throwing.log({ athleteId: CHILD, thrownOn, kind: "game", pitches });

describe("the board", () => {
  it("holds two weeks back and two ahead, today between them", async () => {
    const { fromDay, dayCount, today, rows } = await boardAs(WHO.coach);
    expect({ fromDay, dayCount, today }).toEqual({
      fromDay: "2026-11-11",
      dayCount: 29,
      today: "2026-11-25",
    });
    expect(rows.map((row) => decodeCells(row.cells).length)).toEqual([29, 29, 29, 29]);
  });

  it("is the same for a coach and an admin, by name", async () => {
    const { rows } = await boardAs(WHO.coach);
    expect(rows.map((row) => row.name)).toEqual(["Kit Marsh", "Robin Marsh", "Pip Stone", "Sam Vale"]);
    expect((await boardAs(WHO.admin)).rows).toEqual(rows);
  });

  it("says what was thrown, the rest it asks for, and the first day with room again", async () => {
    await logGame("2026-11-25", 51);
    const days = await daysOf(CHILD);
    expect(days.get("2026-11-25")).toEqual({ limit: 34, outs: 0, thrown: 51, outing: 0, booked: 0 });
    expect(["2026-11-26", "2026-11-27", "2026-11-28"].map((day) => days.get(day)?.limit)).toEqual([
      "resting",
      "resting",
      "resting",
    ]);
    expect(days.get("2026-11-29")?.limit).toBe(85);
  });

  it("tells an outing from a booked session, and makes room for both", async () => {
    await bookBullpen(academy, "2026-11-27");
    await (await academy.as(WHO.guardian)).throwing.planOuting({
      athleteId: CHILD,
      plannedOn: "2026-12-01",
      pitches: 60,
    });
    const days = await daysOf(CHILD);
    expect(days.get("2026-11-27")).toMatchObject({ booked: 40, outing: 0, thrown: 0 });
    expect(days.get("2026-12-01")).toMatchObject({ outing: 60, booked: 0, thrown: 0 });
    expect(days.get("2026-11-30")?.limit).toBe(20);
    expect(days.get("2026-11-28")?.limit).toBe("resting");
  });

  it("leaves a row out that was corrected, and a game's plan that was played", async () => {
    const { entryId } = await logGame("2026-11-24", 75);
    const guardian = await academy.as(WHO.guardian);
    await guardian.throwing.correct({ entryId, thrownOn: "2026-11-24", kind: "game", pitches: 10 });
    expect((await daysOf(CHILD)).get("2026-11-24")?.thrown).toBe(10);
    await guardian.throwing.planOuting({ athleteId: CHILD, plannedOn: "2026-11-25", pitches: 60 });
    await logGame("2026-11-25", 30);
    expect((await daysOf(CHILD)).get("2026-11-25")).toMatchObject({ thrown: 30, outing: 0 });
  });

  it("stops the days from the pain on, and after a clearance only those before it", async () => {
    const reportedAtMs = Date.UTC(2026, 10, 20, 20);
    const report = { kind: "pain" as const, reportedByPersonId: WHO.guardian };
    await academy.db
      .insert(painReport)
      .values({ ...report, id: "pan_1", athleteId: CHILD, feltOn: "2026-11-19", reportedAtMs });
    const stopped = await daysOf(CHILD);
    expect(stopped.get("2026-11-18")?.limit).toBe(85);
    expect(stopped.get("2026-11-19")?.limit).toBe("pain");
    expect(stopped.get("2026-12-09")?.limit).toBe("pain");
    await academy.db.insert(painClearance).values({
      id: "clr_1",
      athleteId: CHILD,
      symptomFreeSince: "2026-11-21",
      examinedByRemarkId: (await keepRemark(academy.db, "The physician")) ?? "",
      clearedByPersonId: WHO.guardian,
      clearedAtMs: Date.UTC(2026, 10, 23, 20),
    });
    const cleared = await daysOf(CHILD);
    expect(cleared.get("2026-11-22")?.limit).toBe("pain");
    expect(cleared.get("2026-11-23")?.limit).toBe(85);
  });

  it("answers for every arm and day what the book answers when it is asked alone", async () => {
    await logGame("2026-11-14", 60);
    await logGame("2026-11-22", 40);
    await bookBullpen(academy, "2026-12-02");
    const board = await boardAs(WHO.coach);
    const arms = await armsOf(
      academy.db,
      board.rows.map((row) => row.athleteId),
      academy.clock.ms,
    );
    for (const row of board.rows) {
      const arm = arms.get(row.athleteId);
      decodeCells(row.cells).forEach((cell, index) => {
        const day = addDays(board.fromDay, index);
        const alone = arm ? pitchesAllowed({ ...arm, day }) : null;
        const limit = alone?.status === "resting" ? "resting" : (alone?.pitches ?? "no_published_limit");
        expect(cell.limit, `${row.name} on ${day}`).toBe(limit);
      });
    }
  });

  it("asks about an arm of which nothing was reported for long", async () => {
    await logGame("2026-11-24", 20);
    const rows = (await boardAs(WHO.coach)).rows;
    expect(rows.find((row) => row.athleteId === CHILD)?.unreportedSince).toBeNull();
    expect(rows.find((row) => row.athleteId === WHO.teen.athleteId)?.unreportedSince).toBe("2026-01-05");
  });

  it("leaves out who has left, from the day they leave on", async () => {
    const leave = (leftOn: string) =>
      academy.db.update(athlete).set({ leftOn }).where(eq(athlete.id, WHO.teen.athleteId));
    await leave("2026-11-26");
    expect((await boardAs(WHO.coach)).total).toBe(4);
    await leave("2026-11-25");
    expect((await boardAs(WHO.coach)).rows.map((row) => row.name)).not.toContain("Robin Marsh");
  });
});

describe("why a cell says what it says", () => {
  it("is told in the sentences of every other screen", async () => {
    await logGame("2026-11-25", 51);
    const answer = await cellAs(WHO.otherCoach, CHILD, "2026-11-28");
    expect(answer.marks[0]).toMatchObject({ kind: "resting", freeOn: "2026-11-29" });
    expect(answer.why[0]).toContain("51 on Wed 25 Nov");
  });

  it("names a pain that was cleared since, and nothing before it was felt", async () => {
    await academy.db.insert(painReport).values({
      id: "pan_1",
      athleteId: CHILD,
      kind: "pain",
      feltOn: "2026-11-19",
      reportedByPersonId: WHO.guardian,
      reportedAtMs: Date.UTC(2026, 10, 20, 20),
    });
    expect((await cellAs(WHO.coach, CHILD, "2026-11-18")).marks[0]?.kind).toBe("allowed");
    academy.clock.ms += 1000;
    await (await academy.as(WHO.guardian)).throwing.clearPain({
      athleteId: CHILD,
      symptomFreeSince: "2026-11-21",
      examinedBy: "The physician",
    });
    const answer = await cellAs(WHO.coach, CHILD, "2026-11-20");
    expect(answer.marks[0]?.kind).toBe("pain");
    expect(answer.why.at(-1)).toBe("Cleared on Wed 25 Nov.");
  });

  it.each(["2026-10-01", "2027-01-15"])("is not told of %s, which no board of today shows", async (day) => {
    await refused(academy, () => cellAs(WHO.coach, CHILD, day), because("not_found"));
  });
});

describe("whose board it is", () => {
  it.each([WHO.guardian, WHO.teen.personId, WHO.adult.personId])("is not %s's", async (personId) => {
    await refused(academy, () => boardAs(personId), because("not_found"));
    await refused(academy, () => cellAs(personId, CHILD, "2026-11-25"), because("not_found"));
  });
});
