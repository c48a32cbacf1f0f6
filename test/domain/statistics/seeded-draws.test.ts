import { describe, expect, it } from "vitest";
import { hashOf, seededDraws, shuffledBy } from "@/server/domain/statistics/seeded-draws";

describe("draws from a seed", () => {
  it("hashes by FNV-1a, to the vectors that its authors publish", () => {
    /* G. Fowler, L. C. Noll, K.-P. Vo, D. Eastlake: The FNV Non-Cryptographic Hash Algorithm, test vectors, 32 bits. */
    expect(["", "a", "foobar"].map(hashOf)).toEqual([0x811c9dc5, 0xe40c292c, 0xbf9cf968]);
  });

  it("are the same for one seed and others for another", () => {
    const [one, same, other] = ["a", "a", "b"].map((seed) => {
      const draw = seededDraws(seed);
      return [draw(), draw(), draw()];
    });
    expect(one).toEqual(same);
    expect(one).not.toEqual(other);
  });

  it("are spread evenly from 0 up to 1", () => {
    const draw = seededDraws("even");
    const tenths = Array.from({ length: 10 }, () => 0);
    for (let n = 0; n < 10_000; n += 1) {
      const place = Math.floor(draw() * 10);
      tenths[place] = (tenths[place] ?? 0) + 1;
    }
    /* Chi-square with 9 degrees of freedom is beyond 27.9 once in a thousand. */
    const spread = tenths.reduce((sum, times) => sum + (times - 1000) ** 2 / 1000, 0);
    expect(spread).toBeLessThan(27.9);
  });

  it("put values into every order alike, and lose none", () => {
    const draw = seededDraws("orders");
    const orders = new Map<string, number>();
    for (let n = 0; n < 6000; n += 1) {
      const order = shuffledBy(draw, ["a", "b", "c"]).join("");
      orders.set(order, (orders.get(order) ?? 0) + 1);
    }
    expect([...orders.keys()].sort()).toEqual(["abc", "acb", "bac", "bca", "cab", "cba"]);
    /* Chi-square with 5 degrees of freedom is beyond 20.5 once in a thousand. */
    const spread = [...orders.values()].reduce((sum, times) => sum + (times - 1000) ** 2 / 1000, 0);
    expect(spread).toBeLessThan(20.5);
  });
});
