import { beforeEach, describe, expect, it } from "vitest";
import { coachAbsence } from "@/db/schema/coaches";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { at, bullpen, expectRefused, TUESDAY_AT_FIVE, throwOn } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
  await (await academy.as(WHO.coach)).sessions.book(bullpen());
});

const asked = { day: "2026-12-01", siteId: null };

describe("a day by lane", () => {
  it("stands on today by the site's clock when no day is asked for", async () => {
    /* 22:00 in New York is the next day in UTC already. */
    academy.clock.ms = Date.UTC(2026, 10, 27, 3, 0);
    const seen = await (await academy.as(WHO.admin)).calendar.day({ day: null, siteId: null });
    expect([seen.day, seen.today]).toEqual(["2026-11-26", "2026-11-26"]);
  });

  it("shows every lane with its sessions at their wall-clock hours", async () => {
    const [board] = (await (await academy.as(WHO.coach)).calendar.day(asked)).boards;
    expect(board).toMatchObject({
      siteName: "North site",
      openWords: "14:00 to 21:00",
      fromHour: 14,
      toHour: 21,
    });
    expect(board?.lanes.map((lane) => [lane.name, lane.sessions.length])).toEqual([
      ["Lane 1", 1],
      ["Lane 2", 0],
      ["Lane 3", 0],
    ]);
    expect(board?.lanes[0]?.sessions[0]).toMatchObject({
      timeWords: "17:00 to 17:30",
      fromHour: 17,
      toHour: 17.5,
      names: ["Kit Marsh"],
      coachName: "Cole Rivers",
      withoutRoom: [],
    });
  });

  it("says at once, without anything stored, that a later game has taken the room of a booked bullpen", async () => {
    await throwOn(academy, WHO.child.athleteId, "2026-11-29", 51);
    const [board] = (await (await academy.as(WHO.coach)).calendar.day(asked)).boards;
    expect(board?.lanes[0]?.sessions[0]?.withoutRoom).toEqual(["Kit asks for 20, none by the book now"]);
    const [other] = (await (await academy.as(WHO.coach)).calendar.day({ ...asked, day: "2026-12-02" }))
      .boards;
    expect(other?.lanes.every((lane) => lane.sessions.length === 0)).toBe(true);
  });

  it("marks what is over and was not logged", async () => {
    academy.clock.ms = TUESDAY_AT_FIVE + 31 * 60_000;
    const [board] = (await (await academy.as(WHO.coach)).calendar.day(asked)).boards;
    expect(board?.lanes[0]?.sessions[0]?.isUnlogged).toBe(true);
  });
});

describe("a week by coach", () => {
  it("runs from Monday, with what is booked and the gaps between", async () => {
    await academy.db.insert(coachAbsence).values({
      ...{ id: "cab_1", coachPersonId: WHO.coach },
      ...{ startsAtMs: at("2026-12-02", 0), endsAtMs: at("2026-12-03", 0) },
    });
    const week = await (await academy.as(WHO.admin)).calendar.week({ day: "2026-12-03", siteId: null });
    expect([week.monday, week.days.at(-1)]).toEqual(["2026-11-30", "2026-12-06"]);
    const cole = week.coaches.find((coach) => coach.name === "Cole Rivers");
    expect(cole?.days.map((day) => [day.sessions.length, day.gaps])).toEqual([
      [0, ["14:00 to 21:00"]],
      [1, ["14:00 to 17:00", "17:30 to 21:00"]],
      [0, []],
      [0, ["14:00 to 21:00"]],
      [0, ["14:00 to 21:00"]],
      [0, ["14:00 to 21:00"]],
      [0, []],
    ]);
  });
});

describe("the calendar", () => {
  it("is for staff alone", async () => {
    for (const person of [WHO.guardian, WHO.teen.personId, WHO.adult.personId, WHO.otherGuardian]) {
      const api = await academy.as(person);
      await expectRefused(academy, () => api.calendar.day(asked), { reason: "not_found" });
      await expectRefused(academy, () => api.calendar.week(asked), { reason: "not_found" });
      await expectRefused(academy, () => api.calendar.whom({}), { reason: "not_found" });
    }
  });

  it("names everybody a time can be found for, a coach's own first to tell", async () => {
    const { athletes } = await (await academy.as(WHO.otherCoach)).calendar.whom({});
    expect(athletes.map((one) => [one.name, one.isOwn])).toEqual([
      ["Kit Marsh", false],
      ["Pip Stone", true],
      ["Robin Marsh", false],
      ["Sam Vale", false],
    ]);
  });
});
