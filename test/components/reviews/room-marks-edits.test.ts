import { describe, expect, it } from "vitest";
import {
  afterChange,
  inverse,
  NOTHING_DONE,
  type OnPicture,
  type PictureChange,
  type PictureHistory,
  spanTo,
  standingPoints,
  stepBack,
  stepOn,
  withChange,
} from "@/components/reviews/room-marks-edits";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import type { DraftMark, DraftMeasure } from "@/server/domain/reviews/draft";

const EMPTY: OnPicture = { measures: [], marks: [] };
const NOTE: DraftMark = {
  ...{ id: "m1", checkpointId: "head-steady", clipId: "c1", frame: 40, untilFrame: null },
  ...{ guide: "note", points: [{ x: 10, y: 20 }], text: "" },
};
const RING: DraftMark = {
  ...NOTE,
  id: "m2",
  guide: "ring",
  points: [
    { x: 1, y: 1 },
    { x: 5, y: 5 },
  ],
};
const TRAVEL: DraftMeasure = {
  ...{ id: "a1", kind: "head_travel", checkpointId: null, clipId: "c1", frame: 140, untilFrame: null },
  points: [
    { frame: 3, x: 600, y: 100 },
    { frame: 3, x: 600, y: 500 },
    { frame: 90, x: 600, y: 110 },
    { frame: 140, x: 620, y: 140 },
  ],
};

const change = (before: DraftMark | null, after: DraftMark | null, act = "words"): PictureChange => ({
  ...{ of: "marks", id: (after ?? before)?.id ?? "", act, before, after },
});

/** Makes changes one after another, as the screen does. */
function done(...changes: PictureChange[]): { document: OnPicture; history: PictureHistory } {
  return changes.reduce(
    (now, each) => ({ document: withChange(now.document, each), history: afterChange(now.history, each) }),
    { document: EMPTY, history: NOTHING_DONE },
  );
}

describe("what is drawn on the picture", () => {
  it("is undone step by step to nothing, and done again to what it was", () => {
    let { document, history } = done(change(null, NOTE), change(null, RING), change(NOTE, null));
    const whole = document;
    expect(whole.marks).toEqual([RING]);
    for (let step = 0; step < 3; step += 1) {
      const back = stepBack(history);
      if (back.change) document = withChange(document, back.change);
      history = back.history;
    }
    expect(document).toEqual(EMPTY);
    expect(stepBack(history).change).toBeNull();
    for (let step = 0; step < 3; step += 1) {
      const on = stepOn(history);
      if (on.change) document = withChange(document, on.change);
      history = on.history;
    }
    expect(document).toEqual(whole);
    expect(stepOn(history).change).toBeNull();
  });

  it("takes many moves of one hand as one step, and another hand as another", () => {
    const c = { ...NOTE, text: "c" };
    const chest = { ...NOTE, text: "chest" };
    const moved = { ...chest, points: [{ x: 11, y: 20 }] };
    const { history } = done(
      change(null, NOTE),
      change(NOTE, c),
      change(c, chest),
      change(chest, moved, "point 0"),
    );
    expect(history.done).toHaveLength(3);
    expect(stepBack(stepBack(history).history).change).toMatchObject({ before: chest, after: NOTE });
  });

  it("forgets what was undone once something else is done", () => {
    const { history } = done(change(null, NOTE));
    expect(afterChange(stepBack(history).history, change(null, RING)).undone).toEqual([]);
  });

  it("leaves alone what was written meanwhile", () => {
    const { document } = done(change(null, NOTE), change(null, RING));
    expect(withChange(document, inverse(change(null, NOTE))).marks).toEqual([RING]);
  });
});

describe("the frames a mark shows on", () => {
  it.each([
    ["on to a later frame", 44, { frame: 40, untilFrame: 44 }],
    ["its own alone", 40, { frame: 40, untilFrame: null }],
    ["from an earlier frame", 36, { frame: 36, untilFrame: 40 }],
  ])("reach to the frame in sight: %s", (_where, frame, span) => {
    expect(spanTo(NOTE, frame)).toMatchObject(span);
  });
});

describe("points of a straight-standing frame", () => {
  const namesOf = (kind: DraftMeasure["kind"]) => MEASURES[kind].points;
  const asked = MEASURES.stride_length.points;

  it("are taken over from another measure of the clip, as far as it has them", () => {
    expect(standingPoints({ measures: [TRAVEL] }, "c1", asked, namesOf)).toEqual(TRAVEL.points.slice(0, 2));
  });

  it("are not taken from another clip, nor for a kind that asks for none", () => {
    expect(standingPoints({ measures: [TRAVEL] }, "c2", asked, namesOf)).toEqual([]);
    expect(standingPoints({ measures: [TRAVEL] }, "c1", MEASURES.shoulder_tilt.points, namesOf)).toEqual([]);
  });
});
