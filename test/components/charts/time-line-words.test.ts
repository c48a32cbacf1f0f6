import { describe, expect, it } from "vitest";
import { placeOn } from "@/components/charts/time-axis";
import { placeRows } from "@/components/charts/time-line-layout";
import type { TimeLineItem } from "@/components/charts/time-line-parts";

const axis = { startDay: "2026-09-01", endDay: "2026-12-10" };

describe("the words of a span that changed on the way", () => {
  const parts = [
    { fromDay: "2026-07-01", toDay: "2026-09-20", look: "open" },
    { fromDay: "2026-09-20", toDay: "2026-10-25", look: "hatched" },
    { fromDay: "2026-10-25", toDay: "2026-11-20", look: "thin" },
    { fromDay: "2026-11-20", toDay: "2026-11-29", look: "open" },
  ] as const;
  const knee: TimeLineItem = {
    ...{ id: "knee", row: "row", kind: "span", startDay: "2026-07-01", endDay: "2026-11-29" },
    ...{ label: "Knee", state: "", isLabelled: true, parts },
  };
  const wordsOn = (widthPx: number) =>
    placeRows([{ key: "row", label: "Row" }], [knee], { axis, widthPx })[0]?.items[0]?.words;

  it("stand where one part is long enough in sight, hide none of the others, and never begin out of sight", () => {
    const words = wordsOn(900);
    expect(words?.side).toBe("on");
    expect(words?.at).toBeCloseTo(placeOn(axis, "2026-10-25"), 10);
    expect((words?.at ?? 0) * 900 + (words?.widthPx ?? 0)).toBeLessThan(900 * placeOn(axis, "2026-11-20"));
  });

  it("stand beside it where none is", () => {
    expect(wordsOn(150)?.side).not.toBe("on");
  });
});
