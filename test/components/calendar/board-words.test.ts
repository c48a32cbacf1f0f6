import { describe, expect, it } from "vitest";
import {
  type BoardSession,
  boardSentence,
  standingWord,
  whoInShort,
} from "@/components/calendar/board-words";
import { calendarHref, stepped } from "@/components/calendar/calendar-address";

const session: BoardSession = {
  ...{
    id: "ses_1",
    kind: "bullpen",
    state: "booked",
    timeWords: "17:00 to 17:30",
    fromHour: 17,
    toHour: 17.5,
  },
  ...{ laneName: "Lane 1", siteName: "North site", coachName: "Cole Rivers", names: ["Kit Marsh"] },
  ...{ plannedPitches: 20, withoutRoom: [], isUnlogged: false },
};

describe("a session on a board", () => {
  it("is told in one sentence, booked going without saying", () => {
    expect(boardSentence(session)).toBe(
      "17:00 to 17:30, bullpen, Kit Marsh, with Cole Rivers, Lane 1, 20 pitches planned.",
    );
    const without = { ...session, withoutRoom: ["Kit asks for 20, none by the book now"] };
    expect(boardSentence(without)).toMatch(/ Kit asks for 20, none by the book now\.$/);
  });

  it("says that it was not logged before it says anything else of its state", () => {
    expect(standingWord({ state: "checked_in", isUnlogged: true })).toBe("not logged");
    expect(standingWord({ state: "checked_in", isUnlogged: false })).toBe("checked in");
    expect(standingWord({ state: "booked", isUnlogged: false })).toBe("");
  });

  it("names two and counts more", () => {
    expect(whoInShort(["Kit", "Robin"])).toBe("Kit, Robin");
    expect(whoInShort(["Kit", "Robin", "Sam"])).toBe("3 athletes");
  });
});

describe("a place in the calendar", () => {
  it("steps by a day or by a week and keeps its site", () => {
    const place = { view: "day", day: "2026-11-30", siteId: "site_1" } as const;
    expect(calendarHref(stepped(place, 1))).toBe("/calendar?day=2026-12-01&site=site_1");
    expect(calendarHref(stepped({ ...place, view: "week", siteId: null }, -1))).toBe(
      "/calendar?view=week&day=2026-11-23",
    );
  });
});
