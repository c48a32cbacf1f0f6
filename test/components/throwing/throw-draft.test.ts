import { describe, expect, it } from "vitest";
import type { LogRow } from "@/components/throwing/arm-answer";
import { draftOf, gameOf, inningsProblem, NO_DRAFT } from "@/components/throwing/game-draft";
import { loggedInWords } from "@/components/throwing/logged-in-words";
import { firstThrowDraft, throwsOf, whatInWords } from "@/components/throwing/throw-draft";

const TODAY = "2026-11-25";
const DRAFT = { ...firstThrowDraft(TODAY, "game"), pitches: 40 };

describe("throws that are being told", () => {
  it("begin with today and nothing said, and cannot be sent so", () => {
    const first = firstThrowDraft(TODAY, "bullpen");
    expect(throwsOf(first, "ath_kit")).toBeNull();
    expect(whatInWords(first, TODAY)).toBeNull();
  });

  it("are complete with a number: nothing of a game has to be said", () => {
    const plain = { thrownOn: TODAY, kind: "game", pitches: 40, game: null, pain: null };
    expect(throwsOf(DRAFT, "ath_kit")).toEqual({ athleteId: "ath_kit", ...plain });
  });

  it("carry pain only where it hurts, and only of a game", () => {
    expect(throwsOf({ ...DRAFT, hurts: true }, "ath_kit")?.pain).toEqual(DRAFT.pain);
    expect(throwsOf({ ...DRAFT, hurts: false }, "ath_kit")?.pain).toBeNull();
    expect(throwsOf({ ...DRAFT, hurts: true, kind: "lesson" }, "ath_kit")?.pain).toBeNull();
  });

  it("wait while innings cannot be read, and leave them aside for a lesson", () => {
    const typed = { ...DRAFT, game: { ...NO_DRAFT, innings: "2.5" } };
    expect(throwsOf(typed, "ath_kit")).toBeNull();
    expect(throwsOf({ ...typed, kind: "lesson" }, "ath_kit")).toMatchObject({ kind: "lesson", game: null });
  });

  it.each([
    [TODAY, "40 pitches, game, today"],
    ["2026-11-24", "40 pitches, game, yesterday"],
    ["2026-11-21", "40 pitches, game, Sat 21 Nov"],
  ])("of %s read %j", (thrownOn, words) => {
    expect(whatInWords({ ...DRAFT, thrownOn }, TODAY)).toBe(words);
  });
});

describe("a game that is being told", () => {
  it.each([
    ["", undefined],
    ["2 1/3", undefined],
    ["two", "Write whole innings and thirds, as 2 or 2 1/3."],
  ])("with innings %j says %j", (typed, problem) => {
    expect(inningsProblem(typed)).toBe(problem);
  });

  it("is kept with outs, and with 0 innings where that was said", () => {
    const said = { ...NO_DRAFT, innings: "2 1/3", intentionalWalks: 1, opponent: " Lakeside " };
    expect(gameOf("game", said)).toMatchObject({ outs: 7, intentionalWalks: 1, opponent: "Lakeside" });
    expect(gameOf("game", { ...NO_DRAFT, innings: "0" })).toMatchObject({ outs: 0 });
    expect(gameOf("game", { ...NO_DRAFT, inningsCaught: 0 })).toMatchObject({ inningsCaught: 0 });
    expect(gameOf("game", { ...NO_DRAFT, pitchesAtLastBatter: 0 })).toMatchObject({ pitchesAtLastBatter: 0 });
    expect(gameOf("game", NO_DRAFT)).toBeNull();
    expect(gameOf("bullpen", said)).toBeNull();
  });

  it("that stands on the log is gone on with as it is", () => {
    const game = {
      ...{ outs: 7, inningsCaught: 2, pitchesAtLastBatter: 36, intentionalWalks: 1 },
      ...{ teamId: "tea_own", opponent: "Lakeside" },
    };
    const row = { ...game, kind: "game", pitches: 40 } as LogRow;
    expect(gameOf("game", draftOf(row))).toEqual(game);
    const silent = { ...row, outs: null, intentionalWalks: 0 };
    expect(draftOf(silent)).toMatchObject({ innings: "", intentionalWalks: null });
  });
});

describe("what became of throws", () => {
  it.each([
    [{ kind: "sent", words: "at most 45 by the book" }, true, "Logged: 40. Today: at most 45 by the book."],
    [{ kind: "kept" }, true, "Kept on this phone: 40. It will be sent when there is signal."],
    [{ kind: "refused", sentence: "The day has not come yet." }, false, "The day has not come yet."],
    [{ kind: "unreachable" }, false, expect.stringContaining("still on this page")],
  ] as const)("%j is said so", (outcome, isDone, text) => {
    expect(loggedInWords(outcome, "40")).toEqual({ isDone, text });
  });
});
