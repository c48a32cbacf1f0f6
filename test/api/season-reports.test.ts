import { beforeEach, describe, expect, it } from "vitest";
import { type TestAcademy, WHO } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { because, refuses } from "../helpers/refuses";

const SEASON = { fromOn: "2026-01-01", toOn: "2026-12-31" };

let academy: TestAcademy;
let records: Record<"child" | "teen" | "adult" | "stranger", AthleteRecord>;

beforeEach(async () => {
  ({ academy, records } = await makeBusyAcademy());
});

const viewAs = async (
  personId: string,
  athleteId: string = WHO.child.athleteId,
  span: typeof SEASON | null = null,
) => (await academy.as(personId)).seasonReports.view({ athleteId, span });

describe("a season's report", () => {
  it("opens on the season a coach wrote of, with what was worked on, thrown, attended and written", async () => {
    const { report, spans, athlete } = await viewAs(WHO.guardian);
    expect(athlete.name).toBe("Kit Marsh");
    expect(report).toMatchObject({ ...SEASON, asOf: "2026-11-25", academyName: "Test academy" });
    expect(spans).toEqual([SEASON, { fromOn: "2025-01-01", toOn: "2025-12-31" }]);
    expect(report.workedOn.map(({ id }) => id)).toContain(records.child.correction);
    expect(report.throwing.months.find(({ month }) => month === "2026-11")).toEqual({
      month: "2026-11",
      throws: 30,
      outings: 1,
      outingPitches: 30,
    });
    /* Booked for December and begun an hour ago are one apart: only what has started can have been attended. */
    expect(report.sessions.booked).toBe(2);
    expect(report.focus).toMatchObject({ text: "marker-child-only focus", byName: "Cole Rivers" });
  });

  it("is the same for staff and family; each is told what they may do", async () => {
    const seen = await Promise.all(
      [WHO.admin, WHO.coach, WHO.guardian, WHO.teen.personId].map((who) => viewAs(who, WHO.teen.athleteId)),
    );
    for (const { report } of seen) expect(report).toEqual(seen[0]?.report);
    expect(seen.map(({ mayWrite, mayShare, mayRevoke }) => [mayWrite, mayShare, mayRevoke])).toEqual([
      [false, false, true],
      [true, false, true],
      [false, true, true],
      [false, false, false],
    ]);
  });

  it("of a span that cannot be told of says why and shows the usual one", async () => {
    const { report, spanProblem } = await viewAs(WHO.coach, WHO.child.athleteId, {
      fromOn: "2026-05-01",
      toOn: "2026-05-01",
    });
    expect(spanProblem).toBe("The first day must lie before the last.");
    expect(report).toMatchObject(SEASON);
  });

  it("is drawn up for an athlete of whom nothing is known, without a figure that is none", async () => {
    academy.sqlite.exec("DELETE FROM session_athlete");
    const { report } = await viewAs(WHO.coach, WHO.child.athleteId, {
      fromOn: "2024-01-01",
      toOn: "2024-12-31",
    });
    expect(report.workedOn).toEqual([]);
    expect(report.throwing.words).toEqual(["Nothing was logged in this time."]);
    expect(report.sessions).toMatchObject({ booked: 0, came: 0, byKind: [] });
    expect(report.focus).toBeNull();
    expect(JSON.stringify(report)).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("what the next season is for", () => {
  const write = (focus: string, afterId: string | null, athleteId: string = WHO.child.athleteId) =>
    ({ athleteId, ...SEASON, focus, afterId }) as const;

  it("is written by a coach, the latest holds, and what was there before stays on record", async () => {
    const before = (await viewAs(WHO.coach)).writtenId;
    const other = await academy.as(WHO.otherCoach);
    await other.seasonReports.write(write("  A firm front leg.  ", before));
    const { report } = await viewAs(WHO.guardian);
    expect(report.focus).toEqual({
      text: "A firm front leg.",
      byName: "Dana Field",
      writtenOn: "2026-11-25",
    });
    const rows = academy.sqlite
      .prepare("SELECT id FROM season_report WHERE athlete_id = ?")
      .all(WHO.child.athleteId);
    expect(rows).toHaveLength(2);
  });

  it("is not written over words that the writer did not see", async () => {
    await refuses(
      academy,
      WHO.coach,
      (api) => api.seasonReports.write(write("Mine.", null)),
      because("changed_meanwhile"),
    );
  });

  it("is refused empty, too long, by an admin who is no coach, and by every family", async () => {
    const { writtenId } = await viewAs(WHO.coach);
    const coach = await academy.as(WHO.coach);
    for (const focus of ["   ", "x".repeat(601)]) {
      await expect(coach.seasonReports.write(write(focus, writtenId))).rejects.toMatchObject({
        code: "BAD_REQUEST",
      });
    }
    for (const who of [WHO.admin, WHO.guardian, WHO.otherGuardian, WHO.teen.personId]) {
      await refuses(
        academy,
        who,
        (api) => api.seasonReports.write(write("Mine.", writtenId)),
        because("not_found"),
      );
    }
  });
});
