import { describe, expect, it } from "vitest";
import {
  amountInWords,
  chanceInWords,
  leastToTell,
  levelInWords,
  signedInWords,
} from "@/server/domain/mechanics/amount-in-words";
import { towardBetter, wantedDirection, wayInWords } from "@/server/domain/mechanics/wanted-direction";

describe("an amount in words", () => {
  it("is told in the unit of its series, without its sign", () => {
    expect(amountInWords("front_knee_flexion", -7.04)).toBe("7°");
    expect(amountInWords("stride_length", 2.25)).toBe("2.3 %");
    expect(amountInWords("finish_hold", -42)).toBe("0.042 s");
    expect(["judgement", "judgement"].map((kind, at) => amountInWords(kind as "judgement", at + 1))).toEqual([
      "1 step",
      "2 steps",
    ]);
    expect(amountInWords("judgement", 1.5)).toBe("1.5 steps");
    expect(amountInWords("judgement", 0.99)).toBe("1 step");
  });

  it("is signed where it goes two ways, and 0 is never minus", () => {
    expect(signedInWords("front_knee_flexion", -0.36)).toBe("−0.4°");
    expect([0.04, -0.04, 0, -0].map((value) => signedInWords("front_knee_flexion", value))).toEqual(
      Array.from({ length: 4 }, () => "0°"),
    );
  });

  it("of a value names its side", () => {
    expect(levelInWords("judgement", 1.5)).toBe("1.5");
    expect(levelInWords("trunk_tilt_forward", -4.2)).toBe("4° away from the plate");
    expect(levelInWords("front_knee_flexion", 41)).toBe("41°");
  });

  it("shows from a whole step, degree, hundredth, or hundredth of a second on", () => {
    expect([leastToTell("judgement"), leastToTell("stride_length"), leastToTell("finish_hold")]).toEqual([
      1, 1, 10,
    ]);
  });

  it("of a chance keeps what is small", () => {
    expect([0.0004, 0.0163, 0.1, 1].map(chanceInWords)).toEqual(["less than 0.001", "0.016", "0.10", "1.00"]);
  });
});

describe("which way is better", () => {
  const stated = { kind: "nearer", to: 0 } as const;

  it("is more for a judgement, for a measure what the correction asks for, else the checkpoint; else nobody guesses", () => {
    expect(wantedDirection("judgement", { kind: "less" }, null)).toEqual({ kind: "more" });
    expect(wantedDirection("stride_length", { kind: "less" }, { kind: "more" })).toEqual({ kind: "less" });
    expect(wantedDirection("stride_direction", { kind: "unstated" }, stated)).toEqual(stated);
    expect(wantedDirection("stride_length", null, null)).toEqual({ kind: "unstated" });
  });

  it("puts a value on a scale on which more is better", () => {
    expect(towardBetter(stated, -12)).toBe(-12);
    expect(towardBetter(stated, 12)).toBe(-12);
    expect(towardBetter({ kind: "less" }, 40)).toBe(-40);
    expect([towardBetter({ kind: "more" }, 40), towardBetter({ kind: "unstated" }, 40)]).toEqual([40, 40]);
  });

  it("is told as more, less, nearer or farther off", () => {
    const ways = [{ kind: "more" }, { kind: "less" }, stated, { kind: "unstated" }] as const;
    expect(ways.map((wanted) => wayInWords(wanted, 2))).toEqual(["more", "less", "nearer", "more"]);
    expect(ways.map((wanted) => wayInWords(wanted, -2))).toEqual(["less", "more", "farther off", "less"]);
  });
});
