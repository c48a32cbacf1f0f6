import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { byteRange } from "@/server/media/byte-range";

describe("the range of a file asked for", () => {
  test.each([
    [null, 10, "whole"],
    ["bytes=0-3", 10, { first: 0, last: 3 }],
    ["bytes=2-", 10, { first: 2, last: 9 }],
    ["bytes=-3", 10, { first: 7, last: 9 }],
    ["bytes=-99", 10, { first: 0, last: 9 }],
    ["bytes=9-9", 10, { first: 9, last: 9 }],
    ["bytes=4-999", 10, { first: 4, last: 9 }],
    ["BYTES=0-0", 10, { first: 0, last: 0 }],
    ["bytes=10-", 10, "unsatisfiable"],
    ["bytes=10-12", 10, "unsatisfiable"],
    ["bytes=-0", 10, "unsatisfiable"],
    ["bytes=0-", 0, "unsatisfiable"],
    ["bytes=-5", 0, "unsatisfiable"],
    ["bytes=5-2", 10, "whole"],
    ["bytes=-", 10, "whole"],
    ["bytes=0-1,4-5", 10, "whole"],
    ["lines=0-1", 10, "whole"],
    ["bytes=a-b", 10, "whole"],
    ["bytes=1.5-3", 10, "whole"],
    ["bytes=99999999999999999999-", 10, "unsatisfiable"],
  ] as const)("%s of %i bytes is %o", (header, byteCount, expected) => {
    expect(byteRange(header, byteCount)).toEqual(expected);
  });

  const sizes = fc.integer({ min: 1, max: 200 });
  const places = fc.integer({ min: 0, max: 260 });

  test("from here to there is what Buffer.subarray gives", () => {
    fc.assert(
      fc.property(sizes, places, places, (byteCount, a, b) => {
        const [first, last] = [Math.min(a, b), Math.max(a, b)];
        const range = byteRange(`bytes=${first}-${last}`, byteCount);
        expect(bytesOf(range, byteCount)).toEqual(plain(byteCount).subarray(first, last + 1));
      }),
    );
  });

  test("from here on is what Buffer.subarray gives", () => {
    fc.assert(
      fc.property(sizes, places, (byteCount, first) => {
        const range = byteRange(`bytes=${first}-`, byteCount);
        expect(bytesOf(range, byteCount)).toEqual(plain(byteCount).subarray(first));
      }),
    );
  });

  test("the last so many is what Buffer.subarray gives from the end", () => {
    fc.assert(
      fc.property(sizes, places, (byteCount, length) => {
        const range = byteRange(`bytes=-${length}`, byteCount);
        expect(bytesOf(range, byteCount)).toEqual(plain(byteCount).subarray(Math.max(0, byteCount - length)));
      }),
    );
  });
});

const plain = (byteCount: number): Buffer => Buffer.from(Array.from({ length: byteCount }, (_, at) => at));

function bytesOf(range: ReturnType<typeof byteRange>, byteCount: number): Buffer {
  if (range === "unsatisfiable") return Buffer.alloc(0);
  if (range === "whole") return plain(byteCount);
  expect(range.first).toBeGreaterThanOrEqual(0);
  expect(range.last).toBeLessThan(byteCount);
  return plain(byteCount).subarray(range.first, range.last + 1);
}
