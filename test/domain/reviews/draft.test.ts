import { describe, expect, it } from "vitest";
import { DELIVERY_EVENTS } from "@/server/domain/mechanics/delivery";
import {
  checkDraftSchema,
  DRAFT_LIMITS,
  EMPTY_CHECK_DRAFT,
  EMPTY_REVIEW_DRAFT,
  reviewDraftSchema,
} from "@/server/domain/reviews/draft";
import { check, correction, keep, many, review, verdict } from "../../helpers/review-drafts";

describe("a draft", () => {
  it("may be empty, unfinished and reread from its own JSON", () => {
    const unfinished = review({ corrections: [correction({ cue: "" })], keeps: [keep({ text: "" })] });
    expect(reviewDraftSchema.parse(JSON.parse(JSON.stringify(unfinished)))).toEqual(unfinished);
    expect(reviewDraftSchema.parse(EMPTY_REVIEW_DRAFT)).toEqual(EMPTY_REVIEW_DRAFT);
    expect(checkDraftSchema.parse(EMPTY_CHECK_DRAFT)).toEqual(EMPTY_CHECK_DRAFT);
  });

  const bad: [string, unknown, string][] = [
    ["a field nobody knows", { ...review(), colour: "clay" }, ""],
    [
      "a cue a character too long",
      review({ corrections: [correction({ cue: "x".repeat(501) })] }),
      "corrections",
    ],
    ["a frame before the first", review({ corrections: [correction({ frame: -1 })] }), "corrections"],
    ["half a frame", review({ keeps: [keep({ clipId: "side", frame: 1.5 })] }), "keeps"],
    ["a frame beyond any clip", review({ corrections: [correction({ frame: 1_000_001 })] }), "corrections"],
    ["two corrections of one id", review({ corrections: [correction(), correction()] }), "corrections"],
    [
      "eleven corrections",
      review({ corrections: many(11, (n) => correction({ id: `c${n}` })) }),
      "corrections",
    ],
    ["thirteen keeps", review({ keeps: many(13, (n) => keep({ id: `k${n}` })) }), "keeps"],
    [
      "a score of 4",
      { ...review(), judgements: [{ checkpointId: "hips-lead", clipId: "side", frame: 1, score: 4 }] },
      "judgements",
    ],
    [
      "one checkpoint judged twice on a clip",
      review({
        judgements: many(2, (n) => ({ checkpointId: "hips-lead", clipId: "side", frame: n, score: 1 })),
      }),
      "judgements",
    ],
    [
      "one event marked twice on a clip",
      review({ eventMarks: many(2, (n) => ({ clipId: "side", event: "finish", frame: n })) }),
      "eventMarks",
    ],
  ];

  it.each(bad)("is refused with %s", (_case, draft, field) => {
    const result = reviewDraftSchema.safeParse(draft);
    expect(result.success).toBe(false);
    expect(result.error?.issues[0]?.path[0] ?? "").toBe(field);
  });

  it("takes each of its texts and lists at exactly its limit", () => {
    const full = review({
      corrections: many(DRAFT_LIMITS.corrections, (n) =>
        correction({ id: `c${n}`, cue: "x".repeat(DRAFT_LIMITS.cueLength), frame: DRAFT_LIMITS.frame }),
      ),
      keeps: many(DRAFT_LIMITS.keeps, (n) =>
        keep({ id: `k${n}`, text: "x".repeat(DRAFT_LIMITS.keepLength) }),
      ),
      eventMarks: many(12, (n) => n).flatMap((n) =>
        DELIVERY_EVENTS.map((event, frame) => ({ clipId: `clip${n}`, event, frame })),
      ),
    });
    expect(reviewDraftSchema.safeParse(full).success).toBe(true);
  });

  it.each([
    ["a verdict nobody knows", { ...check(), verdicts: [{ ...verdict("c1"), verdict: "maybe" }] }],
    ["two verdicts on one correction", check({ verdicts: [verdict("c1"), verdict("c1")] })],
    ["a note a character too long", check({ note: "x".repeat(1001) })],
  ])("of a check is refused with %s", (_case, draft) => {
    expect(checkDraftSchema.safeParse(draft).success).toBe(false);
  });
});
