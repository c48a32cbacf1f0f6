import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { missingToSend, missingToSettle } from "@/server/domain/reviews/readiness";
import { check, correction, keep, many, review, verdict } from "../../helpers/review-drafts";

const clips = [
  { id: "side", frameCount: 412 },
  { id: "back", frameCount: 300 },
];
const sending = { openCount: 0, max: 5, clips };

describe("a review is ready to send", () => {
  it.each([
    ["with a correction that has a cue", review()],
    ["with a keep alone", review({ corrections: [], keeps: [keep()] })],
    [
      "with marks in order, two of them on one frame",
      review({
        eventMarks: [
          { clipId: "side", event: "ball_release", frame: 200 },
          { clipId: "side", event: "max_external_rotation", frame: 200 },
          { clipId: "back", event: "front_foot_contact", frame: 250 },
        ],
      }),
    ],
    ["with a mark on the last frame", review({ corrections: [correction({ frame: 411 })] })],
  ])("%s", (_case, draft) => {
    expect(missingToSend(draft, sending)).toEqual([]);
  });

  it.each([
    ["nothing is said", review({ corrections: [] }), ["name at least one keep or correction"]],
    [
      "a cue is blank; it is named by its number in the recap",
      review({ corrections: [correction({ id: "late", phase: "follow_through", cue: " " }), correction()] }),
      ["write the cue of correction 2"],
    ],
    ["a keep says nothing", review({ keeps: [keep({ text: "" })] }), ["say what to keep in keep 1"]],
    [
      "a frame is past the last, counted from 1 as on the screen",
      review({ corrections: [correction({ frame: 412 })] }),
      ["frame 413 is marked on a clip of 412 frames"],
    ],
    [
      "a clip is not of the round",
      review({ corrections: [correction({ clipId: "other" })] }),
      ["something is marked on a clip that is not in this round"],
    ],
    [
      "a keep has a frame and no clip",
      review({ keeps: [keep({ frame: 3 })] }),
      ["a frame and its clip go together: mark both or neither"],
    ],
    [
      "release is marked before contact",
      review({
        eventMarks: [
          { clipId: "side", event: "front_foot_contact", frame: 200 },
          { clipId: "side", event: "ball_release", frame: 199 },
        ],
      }),
      ["ball release is marked before front foot contact"],
    ],
  ])("not while %s", (_case, draft, missing) => {
    expect(missingToSend(draft, sending)).toEqual(missing);
  });

  it.each([
    [4, 1, []],
    [4, 2, ["leave out 1 correction: 4 open already and 5 is the most at a time"]],
    [5, 1, ["leave out 1 correction: 5 open already and 5 is the most at a time"]],
    [6, 2, ["leave out 2 corrections: 6 open already and 5 is the most at a time"]],
    [6, 0, []],
  ])("with %i open and %i more, missing %j", (openCount, added, missing) => {
    const draft = review({ corrections: many(added, (n) => correction({ id: `c${n}` })), keeps: [keep()] });
    expect(missingToSend(draft, { ...sending, openCount })).toEqual(missing);
  });
});

describe("a check is ready to settle the round", () => {
  const facts = { openIds: ["c1", "c2"], heldIds: ["h1"], clips };
  const both = [verdict("c1"), verdict("c2", { verdict: "not_yet" })];

  it.each([
    ["when every open correction has a verdict", check({ verdicts: both })],
    [
      "when one is retired with a reason",
      check({ verdicts: [verdict("c1")], retirements: [{ correctionId: "c2", reason: "Grew out of it" }] }),
    ],
    [
      "when one that held is judged again",
      check({ verdicts: [...both, verdict("h1", { verdict: "not_yet", clipId: "side", frame: 10 })] }),
    ],
    ["when one that held is left alone", check({ verdicts: [...both, verdict("h1", { verdict: null })] })],
  ])("%s", (_case, draft) => {
    expect(missingToSettle(draft, facts)).toEqual([]);
  });

  it.each([
    ["one has none", check({ verdicts: [verdict("c1")] }), ["1 correction has no verdict"]],
    ["all have none", check(), ["2 corrections have no verdict"]],
    [
      "one is null",
      check({ verdicts: [verdict("c1"), verdict("c2", { verdict: null })] }),
      ["1 correction has no verdict"],
    ],
    [
      "a reason is blank",
      check({ verdicts: [verdict("c1")], retirements: [{ correctionId: "c2", reason: " " }] }),
      ["say why a correction is no longer wanted"],
    ],
    [
      "one is retired and judged at once",
      check({ verdicts: both, retirements: [{ correctionId: "c2", reason: "Grew out of it" }] }),
      ["a correction cannot be retired and given a verdict at once"],
    ],
    [
      "one that held is to be retired",
      check({ verdicts: both, retirements: [{ correctionId: "h1", reason: "Grew out of it" }] }),
      ["a verdict names a correction that is not open any more"],
    ],
    [
      "a verdict names somebody else's",
      check({ verdicts: [...both, verdict("x")] }),
      ["a verdict names a correction that is not open any more"],
    ],
    [
      "a verdict's frame is not in the clip",
      check({ verdicts: [verdict("c1", { clipId: "back", frame: 300 }), verdict("c2")] }),
      ["frame 301 is marked on a clip of 300 frames"],
    ],
  ])("not while %s", (_case, draft, missing) => {
    expect(missingToSettle(draft, facts)).toEqual(missing);
  });

  it("names exactly as many without a verdict as there are", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 12 }), (open, judged) => {
        const openIds = many(open, (n) => `c${n}`);
        const verdicts = openIds.slice(0, judged).map((id) => verdict(id));
        const [first] = missingToSettle(check({ verdicts }), { openIds, heldIds: [], clips });
        const left = Math.max(0, open - judged);
        expect(first === undefined ? 0 : Number(first.split(" ")[0])).toBe(left);
      }),
    );
  });
});
