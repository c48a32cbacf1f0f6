import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { DRAFT_LIMITS, EMPTY_REVIEW_DRAFT, reviewDraftSchema } from "@/server/domain/reviews/draft";
import { placeToShow } from "@/server/domain/reviews/place-to-show";
import {
  laidInWords,
  layTemplate,
  reviewTemplateSchema,
  type TemplateFacts,
  type TemplateLine,
  templatesForAge,
} from "@/server/domain/reviews/review-template";
import { correction, review } from "../../helpers/review-drafts";

const line = (changes: Partial<TemplateLine> = {}): TemplateLine => ({
  kind: "correction",
  checkpointId: "hips-lead",
  words: "Hip first",
  drill: "Hip bumps",
  ...changes,
});
const keepLine = (checkpointId: string) => line({ kind: "keep", checkpointId, words: "Good", drill: "" });
const side = { id: "side", view: "open_side" as const, marks: { ball_release: 110, front_foot_contact: 90 } };
const front = { id: "front", view: "front" as const, marks: { first_movement: 7 } };

function facts(changes: Partial<TemplateFacts> = {}): TemplateFacts {
  let made = 0;
  return {
    checkpoints: STARTING_LIBRARY,
    openCheckpointIds: [],
    maxOpen: 5,
    clips: [side, front],
    inSight: { clipId: "side", frame: 30 },
    newId: () => {
      made += 1;
      return `row-${made}`;
    },
    ...changes,
  };
}

describe("placeToShow", () => {
  const at = { clipId: "side", frame: 30 };
  it.each([
    [
      "the frame of its moment",
      { views: ["open_side"], event: "ball_release" },
      { clipId: "side", frame: 110 },
    ],
    ["the frame in sight where its moment is not marked", { views: ["open_side"], event: "finish" }, at],
    [
      "its moment on another clip",
      { views: ["front"], event: "first_movement" },
      { clipId: "front", frame: 7 },
    ],
    ["no frame where it cannot be seen", { views: ["back"], event: "finish" }, null],
    ["no frame of another clip without its moment", { views: ["front"], event: "finish" }, null],
  ] as const)("finds %s", (_what, { views, event }, place) => {
    expect(placeToShow({ views: [...views], event }, [side, front], at)).toEqual(place);
  });

  it("takes a clip of an unknown view for one that shows everything", () => {
    const unknown = { ...side, view: null };
    expect(placeToShow({ views: ["back"], event: "ball_release" }, [unknown], at)).toEqual({
      clipId: "side",
      frame: 110,
    });
  });
});

describe("laying a template over a review", () => {
  it("puts each line on the frame of its moment, as a correction or a keep", () => {
    const { document, added, leftOut } = layTemplate(
      EMPTY_REVIEW_DRAFT,
      [line(), keepLine("gaze-on-plate"), line({ checkpointId: "front-knee-firms" })],
      facts({ clips: [{ ...side, marks: { ...side.marks, peak_knee_height: 50 } }] }),
    );
    expect(reviewDraftSchema.parse(document)).toEqual(document);
    expect(added).toEqual({ keeps: 1, corrections: 2 });
    expect(leftOut).toEqual([]);
    expect(document.corrections.map(({ id, cue, frame }) => [id, cue, frame])).toEqual([
      ["row-1", "Hip first", expect.any(Number)],
      ["row-3", "Hip first", 110],
    ]);
    expect(document.keeps).toMatchObject([{ text: "Good", frame: 30, checkpointId: "gaze-on-plate" }]);
  });

  it("never puts on the slip what is there or open already", () => {
    const written = review({ corrections: [correction({ checkpointId: "hips-lead" })] });
    const laid = layTemplate(
      written,
      [line(), line({ checkpointId: "front-knee-firms" })],
      facts({ openCheckpointIds: ["front-knee-firms"] }),
    );
    expect(laid.document).toEqual(written);
    expect(laid.leftOut).toEqual([
      { name: "Hips lead", why: "on the slip already" },
      { name: "Front knee firms from contact to release", why: "open already" },
    ]);
  });

  it("stops at the most that may be open at a time, and says so", () => {
    const laid = layTemplate(
      review({ corrections: [correction({ checkpointId: "stride-length" })] }),
      [line(), line({ checkpointId: "front-knee-firms" })],
      facts({ maxOpen: 3, openCheckpointIds: ["head-steady"] }),
    );
    expect(laid.added.corrections).toBe(1);
    expect(laid.leftOut.map(({ why }) => why)).toEqual(["3 are the most at a time"]);
  });

  it("leaves out what cannot be seen on these clips and what is not offered any more", () => {
    const { leftOut } = layTemplate(
      EMPTY_REVIEW_DRAFT,
      [keepLine("closed-start"), line({ checkpointId: "no-such-thing", words: "Old words" })],
      facts({ clips: [side] }),
    );
    expect(leftOut).toEqual([
      { name: "Feet and front shoulder closed at the start", why: "not seen from here" },
      { name: "Old words", why: "not offered any more" },
    ]);
  });

  it("whatever is laid, twice changes nothing more, the most is kept, and the draft can be saved", () => {
    const lines = fc.array(
      fc.record({
        kind: fc.constantFrom("keep" as const, "correction" as const),
        checkpointId: fc.constantFrom(...STARTING_LIBRARY.map(({ id }) => id)),
      }),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(lines, fc.integer({ min: 1, max: 10 }), (rows, maxOpen) => {
        const given = facts({ maxOpen });
        const all = rows.map((row) => line({ ...row, drill: row.kind === "keep" ? "" : "Drill" }));
        const once = layTemplate(EMPTY_REVIEW_DRAFT, all, given).document;
        expect(layTemplate(once, all, given).document).toEqual(once);
        expect(once.corrections.length).toBeLessThanOrEqual(maxOpen);
        expect(once.keeps.length).toBeLessThanOrEqual(DRAFT_LIMITS.keeps);
        expect(reviewDraftSchema.safeParse(once).success).toBe(true);
      }),
    );
  });

  it("is told in one sentence", () => {
    const added = { keeps: 1, corrections: 2 };
    const leftOut = [{ name: "Hips lead", why: "open already" }];
    expect(laidInWords({ added, leftOut })).toBe(
      "2 corrections and 1 keep are on the slip: look them through. Left out: Hips lead (open already).",
    );
    expect(laidInWords({ added: { keeps: 1, corrections: 0 }, leftOut: [] })).toBe(
      "1 keep is on the slip: look it through.",
    );
    expect(laidInWords({ added: { keeps: 0, corrections: 0 }, leftOut })).toBe(
      "Nothing was put on the slip. Left out: Hips lead (open already).",
    );
  });
});

describe("a template", () => {
  const whole = { name: "First look", fromAge: 9, toAge: 12, lines: [line()] };
  it.each([
    ["as it is", {}, true],
    ["for one age", { toAge: 9 }, true],
    ["with its ages the wrong way round", { toAge: 8 }, false],
    ["without a line", { lines: [] }, false],
    ["without a name", { name: " " }, false],
    ["with a line without words", { lines: [line({ words: "  " })] }, false],
    ["with a drill on a keep", { lines: [line({ kind: "keep" })] }, false],
    ["with a correction named twice", { lines: [line(), line({ words: "Again" })] }, false],
    ["with a checkpoint as keep and correction", { lines: [line(), keepLine("hips-lead")] }, true],
    ["with too many lines", { lines: STARTING_LIBRARY.slice(0, 13).map(({ id }) => keepLine(id)) }, false],
  ])("%s: %o is %s", (_what, changes, fits) => {
    expect(reviewTemplateSchema.safeParse({ ...whole, ...changes }).success).toBe(fits);
  });

  it("is offered for the ages it is for, the narrowest group first", () => {
    const all = [
      { name: "all", fromAge: 4, toAge: 99 },
      { name: "young", fromAge: 9, toAge: 12 },
      { name: "old", fromAge: 13, toAge: 18 },
    ];
    const namesAt = (age: number) => templatesForAge(all, age).map(({ name }) => name);
    expect([9, 12, 13, 40].map(namesAt)).toEqual([
      ["young", "all"],
      ["young", "all"],
      ["old", "all"],
      ["all"],
    ]);
  });
});
