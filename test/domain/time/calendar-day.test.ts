import { describe, expect, it } from "vitest";
import {
  addDays,
  ageOn,
  dayOf,
  daysBetween,
  instantOf,
  isCalendarDay,
  weekdayOf,
} from "@/server/domain/time/calendar-day";

const NEW_YORK = "America/New_York";

describe("calendar days and instants", () => {
  // RFC 5545 section 3.3.5, Form 3: a local time that a clock change skips is read with the offset before the gap.
  it("reads 02:30 on the spring change as 07:30Z", () => {
    expect(new Date(instantOf("2026-03-08", 150, NEW_YORK)).toISOString()).toBe("2026-03-08T07:30:00.000Z");
  });

  // RFC 5545 section 3.3.5, Form 3: a local time that comes twice is the first of the two.
  it("reads 01:30 on the autumn change as the first, 05:30Z", () => {
    expect(new Date(instantOf("2026-11-01", 90, NEW_YORK)).toISOString()).toBe("2026-11-01T05:30:00.000Z");
  });

  it("keeps a 17:00 lesson at 17:00 on both sides of both changes", () => {
    const utc = ["2026-03-07", "2026-03-08", "2026-10-31", "2026-11-01"].map((day) =>
      new Date(instantOf(day, 1020, NEW_YORK)).toISOString().slice(11, 16),
    );
    expect(utc).toEqual(["22:00", "21:00", "21:00", "22:00"]);
  });

  it("takes minute 1440 for the next midnight", () => {
    expect(instantOf("2026-03-07", 1440, NEW_YORK)).toBe(instantOf("2026-03-08", 0, NEW_YORK));
  });

  it("puts an instant near midnight on the site's own day", () => {
    expect(dayOf(Date.UTC(2026, 2, 8, 4, 59), NEW_YORK)).toBe("2026-03-07");
    expect(dayOf(Date.UTC(2026, 2, 8, 5, 0), NEW_YORK)).toBe("2026-03-08");
  });

  it("adds days across a leap day, a year end and a clock change", () => {
    expect(addDays("2028-02-28", 1)).toBe("2028-02-29");
    expect(addDays("2026-12-30", 5)).toBe("2027-01-04");
    expect(daysBetween("2026-03-07", "2026-03-12")).toBe(5);
  });

  it("counts completed years, with 1 March for those born on a leap day", () => {
    expect(ageOn("2014-05-10", "2026-05-09")).toBe(11);
    expect(ageOn("2014-05-10", "2026-05-10")).toBe(12);
    expect(ageOn("2012-02-29", "2026-02-28")).toBe(13);
    expect(ageOn("2012-02-29", "2026-03-01")).toBe(14);
  });

  it("numbers weekdays from Monday and refuses days that do not exist", () => {
    expect(weekdayOf("2025-12-29")).toBe(1);
    expect(weekdayOf("2027-01-03")).toBe(7);
    expect(isCalendarDay("2026-02-29")).toBe(false);
    expect(isCalendarDay("2028-02-29")).toBe(true);
    expect(isCalendarDay("2026-2-9")).toBe(false);
  });
});
