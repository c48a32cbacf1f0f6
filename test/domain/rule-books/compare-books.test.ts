import { describe, expect, it } from "vitest";
import { daysThatDiffer, differingSpans } from "@/server/domain/rule-books/compare-books";
import { TOURNAMENT_INNINGS } from "@/server/domain/throwing/books/tournament-innings";
import { addDays } from "@/server/domain/time/calendar-day";
import { OWN_BOOK, withMostAtTwelve } from "../../helpers/own-book";
import { ask } from "../throwing/arm-question";

const DAYS = Array.from({ length: 7 }, (_, index) => addDays("2026-11-16", index));

describe("the days on which another book would have answered otherwise", () => {
  it("are none for the same rules under another name", () => {
    expect(daysThatDiffer(ask("2026-11-25", { thrown: [["2026-11-17", 60]] }), OWN_BOOK, DAYS)).toEqual([]);
  });

  it("are stricter where less is left, looser where more is, each with both answers", () => {
    const arm = ask("2026-11-25", { thrown: [["2026-11-17", 60]] });
    const found = daysThatDiffer(arm, withMostAtTwelve(OWN_BOOK, 40), DAYS);
    expect(found.map(({ day, change }) => `${day} ${change}`)).toEqual([
      ...["2026-11-16 stricter", "2026-11-17 stricter"],
      ...["2026-11-18 looser", "2026-11-19 looser", "2026-11-20 looser"],
      ...["2026-11-21 stricter", "2026-11-22 stricter"],
    ]);
    expect(found[2]).toMatchObject({ before: "none by the book", after: "at most 40 by the book" });
  });

  it("go by what had been thrown before each day, without plans, overrides and pain", () => {
    const stop = {
      kind: "pain",
      firstFeltOn: "2026-11-16",
      lastFeltOn: "2026-11-16",
      reportIds: ["p"],
    } as const;
    const plain = ask("2026-11-25", { thrown: [["2026-11-17", 60]] });
    const full = ask("2026-11-25", {
      thrown: [["2026-11-17", 60]],
      planned: [["2026-11-20", 80]],
      overrides: [{ id: "o", day: "2026-11-18", pitches: 90 }],
      pain: { ...stop, reportIds: ["p"] },
    });
    const book = withMostAtTwelve(OWN_BOOK, 40);
    expect(daysThatDiffer(full, book, DAYS)).toEqual(daysThatDiffer(plain, book, DAYS));
  });

  it("are put together where neighbours have the same two answers", () => {
    const arm = ask("2026-11-25", { thrown: [["2026-11-17", 60]] });
    const found = daysThatDiffer(arm, withMostAtTwelve(OWN_BOOK, 40), DAYS);
    const spans = differingSpans(found).map(({ fromDay, toDay, days }) => [fromDay, toDay, days]);
    expect(spans).toEqual([
      ["2026-11-16", "2026-11-17", 2],
      ["2026-11-18", "2026-11-20", 3],
      ["2026-11-21", "2026-11-22", 2],
    ]);
    const apart = found.filter(({ day }) => day !== "2026-11-19");
    expect(differingSpans(apart).map(({ days }) => days)).toEqual([2, 1, 1, 2]);
  });

  it("are of another kind where innings stand in place of pitches", () => {
    const [found] = daysThatDiffer(ask("2026-11-25"), TOURNAMENT_INNINGS, ["2026-11-20"]);
    expect(found).toMatchObject({ change: "other", before: "at most 85 by the book" });
    expect(found?.after).toContain("by the book");
  });

  it("leave the books of teams in force beside the other", () => {
    const team = withMostAtTwelve({ ...OWN_BOOK, id: "team" }, 30);
    const arm = { ...ask("2026-11-25"), books: [OWN_BOOK, team] as const };
    expect(daysThatDiffer(arm, withMostAtTwelve(OWN_BOOK, 40), DAYS)).toEqual([]);
  });
});
