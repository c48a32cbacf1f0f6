import { describe, expect, it } from "vitest";
import { passwordProblem } from "@/server/domain/people/password-rules";

describe("passwords", () => {
  it.each([
    ["fourteen chars", "too_short"],
    ["ten ünïcödé chr", null],
    ["fastball-over-the-corner", null],
    ["correct horse battery staple", "common"],
    ["Password12345678", "common"],
    ["aaaaaaaaaaaaaaaaaaaa", "common"],
    ["abcabcabcabcabcabc", "common"],
    ["1234567890123456789", "common"],
    ["abcdefghijklmnopqrst", "common"],
    ["x7 green kettles hum at noon", null],
  ] as const)("%j is %s", (password, problem) => {
    expect(passwordProblem(password)).toBe(problem);
  });

  // NIST SP 800-63B-4 section 3.1.1.2: verifiers should allow at least 64 characters.
  it("may be long, up to two hundred characters", () => {
    const long = "the quick onyx goblin jumps over a lazy dwarf ".repeat(5);
    expect(passwordProblem(long.slice(0, 64))).toBe(null);
    expect(passwordProblem(`${long}!`.padEnd(201, "xyz?q"))).toBe("too_long");
  });
});
