import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CorrectionEvent } from "@/server/domain/reviews/correction-state";
import {
  aboutInWords,
  correctionDaysInWords,
  printedWorkedOn,
  seasonInShort,
  workedOnInWords,
} from "@/server/domain/season-reports/report-in-words";
import { type WorkedOn, workedOn } from "@/server/domain/season-reports/worked-on";
import { addDays, instantOf } from "@/server/domain/time/calendar-day";

const ZONE = "America/New_York";
const SEASON = { fromOn: "2026-03-01", toOn: "2026-10-31" };

const on = (day: string, kind: CorrectionEvent["kind"]): CorrectionEvent => ({
  kind,
  atMs: instantOf(day, 720, ZONE),
  reason: kind === "retired" ? "Enough of it." : "",
});

const told = (happenings: CorrectionEvent[], practisedOn: string[] = []) =>
  workedOn(
    [
      {
        id: "c",
        checkpointName: "Firm front leg",
        phase: "follow_through",
        cue: "Stop it",
        happenings,
        practisedOn,
      },
    ],
    SEASON,
    ZONE,
  )[0];

describe("what was worked on in a season", () => {
  it("is what was open on some day of it, as it stood when it ended", () => {
    const given = [on("2026-01-10", "given"), on("2026-04-02", "confirmed"), on("2026-11-03", "not_yet")];
    expect(told(given)).toMatchObject({
      givenOn: "2026-01-10",
      state: "held",
      heldOn: "2026-04-02",
      cameBackOn: null,
    });
  });

  it.each([
    ["given after it", [on("2026-11-01", "given")], false],
    ["given on its last day", [on("2026-10-31", "given")], true],
    ["held before it", [on("2026-01-10", "given"), on("2026-02-28", "confirmed")], false],
    [
      "held before it and come back in it",
      [...[on("2026-01-10", "given"), on("2026-02-10", "confirmed"), on("2026-05-05", "not_yet")]],
      true,
    ],
    ["let go before it", [on("2026-01-10", "given"), on("2026-02-28", "retired")], false],
    ["let go in it", [on("2026-01-10", "given"), on("2026-03-01", "retired")], true],
  ] satisfies [string, CorrectionEvent[], boolean][])("%s counts or not", (_what, happenings, counts) => {
    expect(told(happenings) !== undefined).toBe(counts);
  });

  it("tells the last day on which it came to hold and on which it came back", () => {
    const there = [
      ...[on("2026-03-10", "given"), on("2026-04-01", "confirmed"), on("2026-05-01", "not_yet")],
      ...[on("2026-06-01", "yes"), on("2026-07-01", "yes"), on("2026-08-01", "partly")],
    ];
    expect(told(there)).toMatchObject({ state: "showing", heldOn: "2026-07-01", cameBackOn: "2026-05-01" });
  });

  it("counts the practice days of the season alone", () => {
    const days = ["2026-02-28", "2026-03-01", "2026-10-31", "2026-11-01"];
    expect(told([on("2026-01-10", "given")], days)?.practiceDays).toBe(2);
  });

  it("never tells a day outside the season of what held or came back in it", () => {
    const kinds = fc.constantFrom<CorrectionEvent["kind"]>("not_yet", "partly", "yes", "confirmed");
    const events = fc.array(fc.tuple(kinds, fc.integer({ min: 1, max: 60 })), { maxLength: 12 });
    fc.assert(
      fc.property(events, (steps) => {
        let day = "2025-12-01";
        const happenings = [on(day, "given")];
        for (const [kind, days] of steps) {
          day = addDays(day, days);
          happenings.push(on(day, kind));
        }
        const one = told(happenings);
        for (const told of [one?.heldOn, one?.cameBackOn]) {
          if (told) expect(told >= SEASON.fromOn && told <= SEASON.toOn).toBe(true);
        }
      }),
    );
  });
});

describe("a season in short", () => {
  const one = (state: WorkedOn["state"], cameBackOn: string | null = null): WorkedOn => ({
    ...{ id: state, checkpointName: "", phase: "stride", cue: "", givenOn: "2026-03-10", state },
    ...{ heldOn: null, cameBackOn, practiceDays: 0 },
  });

  it("says what became of what was worked on", () => {
    expect(workedOnInWords([])).toBe("No correction was worked on in this time.");
    expect(workedOnInWords([one("held")])).toBe("1 correction was worked on: 1 holds.");
    expect(workedOnInWords([one("held", "2026-05-01"), one("given"), one("showing"), one("retired")])).toBe(
      "4 corrections were worked on: 1 holds, 2 are still open, 1 was let go. 1 that had held came back on the way.",
    );
  });

  it("says of how many checkpoints a change is told, and leaves out sessions where none was booked", () => {
    expect(seasonInShort([], { lookedAt: 0, beyondError: 0 }, { booked: 0, came: 0 })).toEqual([
      "No correction was worked on in this time.",
      "No checkpoint has enough observations to tell a change from error.",
    ]);
    expect(seasonInShort([], { lookedAt: 9, beyondError: 2 }, { booked: 3, came: 2 }).slice(1)).toEqual([
      "9 checkpoints were compared; 2 changed beyond measurement error.",
      "2 of 3 booked sessions attended.",
    ]);
  });
});

describe("a correction in one line", () => {
  const worked: WorkedOn = {
    ...{ id: "c", checkpointName: "", phase: "stride", cue: "", state: "held", givenOn: "2026-03-10" },
    ...{ heldOn: null, cameBackOn: null, practiceDays: 0 },
  };

  it("says its days in the order in which they came", () => {
    expect(correctionDaysInWords(worked)).toBe("given on Tue 10 Mar 2026");
    const both = { ...worked, heldOn: "2026-07-01", cameBackOn: "2026-05-01", practiceDays: 1 };
    expect(correctionDaysInWords(both)).toBe(
      "given on Tue 10 Mar 2026, came back on Fri 1 May 2026, held on Wed 1 Jul 2026, practised on 1 day",
    );
    expect(correctionDaysInWords({ ...both, cameBackOn: "2026-08-01" })).toMatch(/held on .+, came back on/);
  });

  it("stands on paper as far as there is room, those first in which something happened last", () => {
    const many = (length: number, cue: string) =>
      Array.from({ length }, (_, at) => ({
        ...{ ...worked, id: `${at}`, cue },
        givenOn: addDays("2026-03-10", length - at),
      }));
    expect(aboutInWords({ ...worked, cue: "Ride it" })).toBe("Stride, given on Tue 10 Mar 2026: “Ride it”");
    expect(printedWorkedOn([worked])).toEqual(new Set(["c"]));
    expect(printedWorkedOn([])).toEqual(new Set());
    expect([...printedWorkedOn(many(60, "Short"))]).toEqual(many(11, "").map(({ id }) => id));
    expect([...printedWorkedOn(many(60, "Long words. ".repeat(40)))]).toEqual(
      many(8, "").map(({ id }) => id),
    );
    const back = { ...worked, id: "back", cameBackOn: "2026-09-01" };
    expect(printedWorkedOn([back, ...many(60, "Short")]).has("back")).toBe(true);
  });
});
