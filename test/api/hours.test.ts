import { describe, expect, it } from "vitest";
import { makeAcademy, WHO } from "../helpers/academy";
import { bookSession } from "../helpers/book-session";
import { because, refuses } from "../helpers/refuses";

describe("a coach's hours", () => {
  const week = [{ siteId: WHO.site, weekday: 1, startsMin: 900, endsMin: 1200 }];

  it("are replaced as a whole, and absences count the sessions booked then", async () => {
    const academy = await makeAcademy();
    await bookSession(academy, Date.UTC(2026, 11, 3, 20, 0));
    const admin = await academy.as(WHO.admin);
    await admin.hours.setWeek({ coachPersonId: WHO.coach, week });
    const away = {
      coachPersonId: WHO.coach,
      siteId: WHO.site,
      firstDay: "2026-12-01",
      lastDay: "2026-12-03",
    };
    expect(await admin.hours.addAbsence(away)).toEqual({ bookedSessions: 1 });
    const [cole] = (await admin.hours.list({})).filter((each) => each.personId === WHO.coach);
    expect(cole?.week).toEqual(week);
    expect(cole?.absences).toMatchObject([
      { startsAtMs: Date.UTC(2026, 11, 1, 5), endsAtMs: Date.UTC(2026, 11, 4, 5) },
    ]);
    await admin.hours.removeAbsence({ absenceId: cole?.absences[0]?.absenceId ?? "" });
    expect((await admin.hours.list({})).flatMap((each) => each.absences)).toEqual([]);
  });

  it.each([
    [
      "two sites at one time",
      [...week, { ...week[0], weekday: 1, startsMin: 1199, endsMin: 1260 }],
      "hours_invalid" as const,
    ],
    ["a site that is not there", [{ ...week[0], siteId: "site_none" }], "not_found" as const],
  ])("refuse %s and keep the week as it was", async (_, spans, reason) => {
    const academy = await makeAcademy();
    const input = { coachPersonId: WHO.coach, week: spans as typeof week };
    await refuses(academy, WHO.admin, (api) => api.hours.setWeek(input), because(reason));
  });

  it("belong to coaches alone, and an absence ends on or after its first day", async () => {
    const academy = await makeAcademy();
    const notCoach = { coachPersonId: WHO.guardian, week };
    await refuses(academy, WHO.admin, (api) => api.hours.setWeek(notCoach), because("not_found"));
    const back = {
      coachPersonId: WHO.coach,
      siteId: WHO.site,
      firstDay: "2026-12-02",
      lastDay: "2026-12-01",
    };
    await refuses(academy, WHO.admin, (api) => api.hours.addAbsence(back), because("hours_invalid"));
  });
});
