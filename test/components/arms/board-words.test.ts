import { describe, expect, it } from "vitest";
import { boardDays, cellFace, cellInWords } from "@/components/arms/board-words";
import { decodeCells } from "@/server/domain/throwing/board-cell";

/** Tue 24 to Mon 30 Nov, today Thu 26. */
const DAYS = boardDays("2026-11-24", 7, "2026-11-26");
const wordsOf = (text: string, at: number) => cellInWords(decodeCells(text), at, DAYS);
const faceOf = (text: string, isPast = false) => {
  const [cell] = decodeCells(text);
  return cell ? cellFace(cell, isPast) : null;
};

describe("the days of a board", () => {
  it("are named, and today is found among them", () => {
    expect(DAYS.words[0]).toBe("Tue 24 Nov");
    expect(DAYS.words.at(-1)).toBe("Mon 30 Nov");
    expect(DAYS.days[DAYS.today]).toBe("2026-11-26");
  });
});

describe("a cell in words", () => {
  it.each([
    ["35", "at most 35 by the book"],
    ["0", "none by the book"],
    ["34t51", "51 thrown, at most 34 more by the book"],
    ["0t85", "85 thrown, none more by the book"],
    ["45o40", "outing planned, 40 pitches, at most 45 more by the book"],
    ["65b20", "20 pitches booked, at most 65 more by the book"],
    ["I9", "at most 9 outs by the book"],
    ["I1t20", "20 thrown, at most 1 more out by the book"],
    ["N", "no published limit"],
    ["Vb20", "20 pitches booked, an admin's override, not by the book"],
    ["P", "no throwing: pain or unusual fatigue reported"],
    ["Rb20", "20 pitches booked, resting"],
  ])("%s today is %j", (text, words) => {
    expect(wordsOf(`85 85 ${text}`, 2)).toBe(words);
  });

  it("names the day a rest ends, as far as the board reaches", () => {
    const row = "85 85 R R 0 20 R";
    expect(wordsOf(row, 2)).toBe("resting until Sun 29 Nov");
    expect(wordsOf(row, 3)).toBe("resting until Sun 29 Nov");
    expect(wordsOf(row, 6)).toBe("resting");
  });

  it("of a day that is over says what was thrown, or that nothing was reported, not what could have been", () => {
    expect(wordsOf("34t51 35 35", 0)).toBe("51 thrown");
    expect(wordsOf("85 35 35", 0)).toBe("no throws reported, at most 85 by the book");
  });

  it("never words a number as a permission", () => {
    const rows = ["35", "34t51", "45o40", "65b20", "0"].map((text) => wordsOf(`85 85 ${text}`, 2));
    expect(rows.filter((words) => !words.includes("by the book"))).toEqual([]);
  });
});

describe("the face of a cell", () => {
  it.each([
    ["35", { kind: "allowed", count: 35, word: "at most", more: "" }],
    ["15b20", { kind: "allowed", count: 15, word: "at most", more: "20 booked" }],
    ["34t51", { kind: "thrown", count: 51, word: "thrown", more: "at most 34" }],
    ["45o40", { kind: "outing", word: "outing", more: "at most 45" }],
    ["Ro40", { kind: "outing", word: "outing", more: "resting" }],
    ["R", { kind: "resting", word: "resting", more: "" }],
    ["Pt20", { kind: "pain", word: "pain", more: "20 thrown" }],
    ["I9", { kind: "allowed", count: 9, word: "outs at most", more: "" }],
    ["I3t20", { kind: "thrown", count: 20, word: "thrown", more: "3 outs" }],
    ["N", { kind: "allowed", word: "no limit in the book", more: "" }],
    ["V", { kind: "allowed", word: "overridden", more: "" }],
    ["Vo40", { kind: "outing", word: "outing", more: "overridden" }],
  ])("%s is a shape with a word: %j", (text, face) => {
    expect(faceOf(text)).toEqual(face);
  });

  it("of a day that is over leaves out what the book would have left", () => {
    expect(faceOf("34t51", true)).toEqual({ kind: "thrown", count: 51, word: "thrown", more: "" });
  });
});
