import { beforeEach, describe, expect, it } from "vitest";
import { academy as academyTable } from "@/db/schema/people";
import { addDays } from "@/server/domain/time/calendar-day";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { bullpen, TUESDAY_AT_FIVE, throwOn } from "../helpers/sessions";
import published from "../reference/load-ratios.json" with { type: "json" };

const CHILD = WHO.child.athleteId;
const TODAY = "2026-11-25";
const DAY_MS = 86_400_000;

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const loadAs = async (personId: string) =>
  (await (await academy.as(personId)).throwing.view({ athleteId: CHILD })).load;

/** The published series on the child's log, its last day today. */
async function throwTheSeries() {
  const loads = published.days.map((day) => day.load);
  for (const [index, load] of loads.entries()) {
    const isLogged = load > 0 || index === 0;
    if (isLogged) await throwOn(academy, CHILD, addDays(TODAY, index - loads.length + 1), load);
  }
}

describe("the load on the throwing page", () => {
  it("has the figures that Python and R compute for the same 42 days, for family and staff alike", async () => {
    await throwTheSeries();
    const expected = published.days.at(-1);
    for (const personId of [WHO.guardian, WHO.coach, WHO.admin]) {
      const last = (await loadAs(personId)).weeks.at(-1);
      expect(last).toMatchObject({ weekOf: "2026-11-23", asOf: TODAY });
      expect(last?.coupled).toBeCloseTo(expected?.coupled ?? 0, 9);
      expect(last?.uncoupled).toBeCloseTo(expected?.uncoupled ?? 0, 9);
      expect(last?.weighted).toBeCloseTo(expected?.weighted ?? 0, 9);
    }
  });

  it("begins where the log does, has a row a week, and the last 28 days one by one", async () => {
    await throwTheSeries();
    const { weeks, days, now, year } = await loadAs(WHO.guardian);
    expect(weeks.map((week) => week.weekOf)[0]).toBe("2026-10-12");
    expect(weeks[0]).toMatchObject({ coupled: null, uncoupled: null, weighted: null });
    const loads = published.days.map((day) => day.load);
    expect(days.map((day) => day.throws)).toEqual(loads.slice(-28).toReversed());
    expect(days[0]?.day).toBe(TODAY);
    expect(now).toBe("Wed 25 Nov: 7.9 throws a day over the last 7 days, 19.5 over the last 28.");
    const total = loads.reduce((sum, load) => sum + load, 0);
    expect(year[0]).toContain(`${total} pitches off a mound, ${total} of them in games`);
  });

  it("looks back past the twelve months that it lists", async () => {
    for (let days = 400; days > 0; days -= 4) await throwOn(academy, CHILD, addDays(TODAY, -days), 40);
    const { weeks } = await loadAs(WHO.guardian);
    expect(weeks[0]?.weekOf).toBe("2025-11-24");
    expect(weeks[0]?.coupled).not.toBeNull();
    const view = await (await academy.as(WHO.guardian)).throwing.view({ athleteId: CHILD });
    expect(view.log.every((row) => row.thrownOn >= "2025-11-25")).toBe(true);
  });

  it("is blank for an empty log, and counts no month as off", async () => {
    expect(await loadAs(WHO.guardian)).toEqual({
      now: null,
      days: [],
      weeks: [],
      effort: [],
      year: ["Since Wed 26 Nov 2025: 0 pitches off a mound, 0 of them in games, live at-bats and showcases."],
      monthsOff: ["No whole calendar month is on the log yet, so none is counted as off."],
    });
  });

  it("makes a week of sessions from effort times minutes, once the week is over", async () => {
    const { sessionId } = await (await academy.as(WHO.coach)).sessions.book(bullpen());
    academy.clock.ms = TUESDAY_AT_FIVE;
    const coach = await academy.as(WHO.coach);
    await coach.sessions.checkIn({ sessionId, athleteId: CHILD, throws: [], pain: null });
    academy.clock.ms = TUESDAY_AT_FIVE + 35 * 60_000;
    const line = {
      athleteId: CHILD,
      attendance: "came" as const,
      minutes: 30,
      pitches: 20,
      work: [],
      note: "",
    };
    const { version } = (await coach.sessions.forStaff({ sessionId })).head;
    await coach.sessions.log({ sessionId, version, lines: [{ ...line, effort: 6 }] });
    expect((await loadAs(WHO.guardian)).effort).toEqual([]);
    academy.clock.ms = TUESDAY_AT_FIVE + 6 * DAY_MS;
    const [week, ...more] = (await loadAs(WHO.guardian)).effort;
    expect(more).toEqual([]);
    expect(week).toMatchObject({ weekOf: "2026-11-30", sessions: 1, withoutEffort: 0, load: 180 });
    /* One day of 180 among seven: mean 180/7, sample deviation 180/sqrt(7), so monotony 1/sqrt(7). */
    expect(week?.monotony).toBeCloseTo(1 / Math.sqrt(7), 12);
    expect(week?.strain).toBeCloseTo(180 / Math.sqrt(7), 9);
  });

  it("says which reading of the books is on, as the academy set it, and by which books at which age", async () => {
    const view = async () => (await academy.as(WHO.guardian)).throwing.view({ athleteId: CHILD });
    const { reading, books } = await view();
    expect(reading).toContain("Bullpens and lessons count like games here, the cautious reading");
    expect(books).toMatchObject([{ standing: "published", sampleYear: null, ageYears: 12 }]);
    expect(books[0]?.advice.length).toBeGreaterThan(0);
    await academy.db.update(academyTable).set({ countedKinds: ["bullpen"] });
    expect((await view()).reading).toContain("Bullpens count like games here, lessons do not");
  });
});
