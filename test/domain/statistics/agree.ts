import { expect } from "vitest";
import type { TooFew } from "@/server/domain/statistics/too-few";

type Figure = number | null | undefined;

/** Agreement to 1e-9 of the expected figure, or to the last digits of figures about 1 where it is next to 0. */
export function agree(figure: Figure, expected: Figure, what = "figure", share = 1e-9): void {
  if (expected === null || expected === undefined || figure === null || figure === undefined) {
    expect(figure ?? null, what).toBe(expected ?? null);
    return;
  }
  const apart = Math.abs(figure - expected);
  expect(apart, `${what}: ${figure} for ${expected}`).toBeLessThanOrEqual(
    Math.max(share * Math.abs(expected), 1e-13),
  );
}

/** {@link agree}, one by one. */
export function agreeAll(figures: readonly Figure[], expected: readonly Figure[], what = "figures"): void {
  expect(figures.length, what).toBe(expected.length);
  figures.forEach((figure, index) => {
    agree(figure, expected[index], `${what} ${index}`);
  });
}

/** The result, where there are data enough for one. */
export function enough<Result extends { kind: string }>(result: Result | TooFew): Exclude<Result, TooFew> {
  if (result.kind === "too_few") throw new Error("The data were expected to be enough.");
  return result as Exclude<Result, TooFew>;
}

/** Every number within, wherever it stands. */
export function numbersIn(result: unknown): number[] {
  if (typeof result === "number") return [result];
  if (typeof result !== "object" || result === null) return [];
  return Object.values(result).flatMap(numbersIn);
}

/** No NaN and no infinity anywhere within. */
export function expectFinite(result: unknown): void {
  expect(numbersIn(result).filter((each) => !Number.isFinite(each))).toEqual([]);
}
