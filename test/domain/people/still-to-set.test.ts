import { describe, expect, it } from "vitest";
import { SETTING_UP, stillToSet } from "@/server/domain/people/still-to-set";

const READY = {
  sites: 1,
  sitesWithHours: 1,
  lanes: 2,
  coaches: 1,
  coachesWithHours: 1,
  pricedKinds: 6,
  athletes: 4,
};

describe("what is still to set", () => {
  it.each([
    ["nothing in an academy that can work", {}, []],
    ["the hours of one site of two", { sites: 2 }, ["site_hours"]],
    ["lanes", { lanes: 0 }, ["lanes"]],
    ["a coach without hours", { coaches: 2 }, ["coach_hours"]],
    ["prices", { pricedKinds: 0 }, ["rates"]],
    ["coach before athletes", { coaches: 0, coachesWithHours: 0, athletes: 0 }, ["coaches", "athletes"]],
  ])("names %s", (_, change, missing) => {
    expect(stillToSet({ ...READY, ...change })).toEqual(missing);
  });

  it("names everything but the coach's hours on the first day: without a coach nobody's hours are missing", () => {
    const nothing = {
      ...READY,
      sitesWithHours: 0,
      lanes: 0,
      coaches: 0,
      coachesWithHours: 0,
      pricedKinds: 0,
    };
    expect(stillToSet({ ...nothing, athletes: 0 })).toEqual(
      SETTING_UP.filter((step) => step !== "coach_hours"),
    );
  });
});
