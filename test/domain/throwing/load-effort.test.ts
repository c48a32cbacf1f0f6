import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effortByWeek, weekEffort } from "@/server/domain/throwing/load-effort";
import published from "../../reference/session-load.json" with { type: "json" };

describe("a week's load, monotony and strain", () => {
  it.each(published.weeks)("are those R and numpy compute for $loads, by the sample's deviation", (week) => {
    const figures = weekEffort(week.loads);
    expect(figures.load).toBe(week.total);
    if (week.monotonySample === null) {
      expect(figures).toMatchObject({ monotony: null, strain: null });
      return;
    }
    expect(figures.monotony).toBeCloseTo(week.monotonySample, 12);
    expect(figures.strain).toBeCloseTo(week.strainSample ?? 0, 8);
    expect(figures.monotony).not.toBeCloseTo(week.monotonyPopulation ?? 0, 3);
  });

  it("do not depend on the order of the days, and monotony not on the unit", () => {
    const days = fc.array(fc.integer({ min: 0, max: 1200 }), { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(days, (loads) => {
        const { load, monotony, strain } = weekEffort(loads);
        const turned = weekEffort(loads.toReversed());
        const tenfold = weekEffort(loads.map((each) => 10 * each));
        expect(turned.load).toBe(load);
        expect(tenfold.load).toBe(10 * (load ?? 0));
        if (monotony === null || strain === null) {
          expect([turned.monotony, turned.strain, tenfold.monotony]).toEqual([null, null, null]);
          return;
        }
        expect(turned.monotony).toBeCloseTo(monotony, 9);
        expect(tenfold.monotony).toBeCloseTo(monotony, 9);
        expect((tenfold.strain ?? 0) / 10).toBeCloseTo(strain, 4);
      }),
    );
  });
});

describe("weeks of sessions", () => {
  const TODAY = "2026-11-25";
  const held = (heldOn: string, effort: number | null, minutes = 60) => ({ heldOn, minutes, effort });

  it("add up effort times minutes by day, from Monday to Sunday", () => {
    const sessions = [
      held("2026-11-16", 5),
      held("2026-11-17", 5, 90),
      held("2026-11-19", 6),
      held("2026-11-20", 4),
      held("2026-11-21", 6),
      held("2026-11-21", 3),
    ];
    const [week, ...more] = effortByWeek(sessions, TODAY);
    expect(more).toEqual([]);
    expect(week).toMatchObject({ weekOf: "2026-11-16", sessions: 6, withoutEffort: 0, load: 1890 });
    expect(week?.monotony).toBeCloseTo(1.2945509, 6);
    expect(week?.strain).toBeCloseTo(2446.70123, 4);
  });

  it("have no figures when an effort is missing, and say of how many", () => {
    const sessions = [held("2026-11-17", 5), held("2026-11-19", null)];
    expect(effortByWeek(sessions, TODAY)).toEqual([
      { weekOf: "2026-11-16", sessions: 2, withoutEffort: 1, load: null, monotony: null, strain: null },
    ]);
  });

  it.each([
    ["without any effort asked", [held("2026-11-17", null)], TODAY],
    ["that is running", [held("2026-11-23", 5)], TODAY],
    ["on its Sunday", [held("2026-11-23", 5)], "2026-11-29"],
  ])("leave out one %s", (_what, sessions, today) => {
    expect(effortByWeek(sessions, today)).toEqual([]);
  });

  it("take a week on the Monday after it, an effort of 0 for an answer, and the earliest first", () => {
    const weeks = effortByWeek([held("2026-11-29", 0), held("2026-11-10", 4)], "2026-11-30");
    expect(weeks.map(({ weekOf, load }) => [weekOf, load])).toEqual([
      ["2026-11-09", 240],
      ["2026-11-23", 0],
    ]);
  });
});
