import { describe, expect, it } from "vitest";
import { overrideNotice } from "@/server/domain/notices/override-notice";

const TOLD = {
  ...{ name: "Kit Marsh", day: "2026-11-28", pitches: 60, byTheBook: 0 },
  ...{ reason: "Last game of the season.", byName: "Ada Frost" },
};

describe("the notice of an override", () => {
  it("says whose number it is, what the book says, why, and that nothing overrides pain", () => {
    const { kind, subject, body } = overrideNotice(TOLD);
    expect(kind).toBe("limit_overridden");
    expect(subject).toBe("Limit overridden for Kit Marsh, Sat 28 Nov 2026");
    expect(body).toContain("Ada Frost overrode the limit of Kit Marsh on Sat 28 Nov 2026");
    expect(body).toContain("This is not the book's number. By the book it is at most 0.");
    expect(body).toContain("Last game of the season.");
    expect(body).toContain("Nothing overrides pain");
    expect(body).not.toMatch(/\b(may|allowed|permitted|safe)\b/);
  });

  it("says of one that was taken back that the book holds again", () => {
    const { subject, body } = overrideNotice({ ...TOLD, pitches: 0, byTheBook: 35 });
    expect(subject).toBe("Override taken back for Kit Marsh, Sat 28 Nov 2026");
    expect(body).toContain("The book holds again: at most 35.");
  });
});
