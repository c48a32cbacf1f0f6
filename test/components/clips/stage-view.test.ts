import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeInPicture } from "@/components/clips/stage/picture-place";
import {
  MAX_ZOOM,
  mirrored,
  panBy,
  type StageView,
  WHOLE_PICTURE,
  wholeAgain,
  zoomAt,
} from "@/components/clips/stage/stage-view";

const part = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const factor = fc.double({ min: 0.2, max: 5, noNaN: true });
const acts = fc.array(
  fc.oneof(
    fc.record({ kind: fc.constant("zoom" as const), factor, x: part, y: part }),
    fc.record({ kind: fc.constant("pan" as const), x: part, y: part }),
    fc.constant({ kind: "mirror" as const }),
  ),
);

function after(done: typeof acts extends fc.Arbitrary<infer Acts> ? Acts : never): StageView {
  return done.reduce<StageView>((view, act) => {
    if (act.kind === "zoom") return zoomAt(view, act.factor, act);
    return act.kind === "pan" ? panBy(view, act.x, act.y) : mirrored(view);
  }, WHOLE_PICTURE);
}

/** Where the picture of a view lies on a screen that shows it 400 by 200 px when whole, from 0, 0. */
function boxOf({ zoom, x, y }: StageView) {
  return {
    left: 200 + x * 400 - (zoom * 400) / 2,
    top: 100 + y * 200 - (zoom * 200) / 2,
    width: zoom * 400,
    height: zoom * 200,
  };
}

const SIZE = { widthPx: 1280, heightPx: 640 };

describe("a picture on its stage", () => {
  it("keeps its right edge where it is when it is enlarged there", () => {
    expect(zoomAt(WHOLE_PICTURE, 2, { x: 0.5, y: 0 })).toEqual({ zoom: 2, x: -0.5, y: 0, isMirrored: false });
  });

  it("is never smaller than whole nor larger than eight times, and never leaves the edge of its stage", () => {
    fc.assert(
      fc.property(acts, (done) => {
        const view = after(done);
        expect(view.zoom).toBeGreaterThanOrEqual(1);
        expect(view.zoom).toBeLessThanOrEqual(MAX_ZOOM);
        const far = (view.zoom - 1) / 2 + 1e-9;
        expect(Math.abs(view.x)).toBeLessThanOrEqual(far);
        expect(Math.abs(view.y)).toBeLessThanOrEqual(far);
      }),
    );
  });

  it("keeps under the finger what is under the finger, as long as no edge is in the way", () => {
    fc.assert(
      fc.property(part, part, fc.boolean(), (x, y, isMirrored) => {
        const [near, nearer] = [2, 4].map((zoom) => zoomAt({ ...WHOLE_PICTURE, isMirrored }, zoom, { x, y }));
        const under = (view: StageView | undefined) =>
          placeInPicture(boxOf(view ?? WHOLE_PICTURE), SIZE, isMirrored, 200 + x * 400, 100 + y * 200);
        expect(under(nearer).x).toBeCloseTo(under(near).x, 6);
        expect(under(nearer).y).toBeCloseTo(under(near).y, 6);
      }),
    );
  });

  it("shows the same place in the middle when it is mirrored, and is as it was when mirrored again", () => {
    fc.assert(
      fc.property(acts, (done) => {
        const view = after(done);
        const middle = (one: StageView) => placeInPicture(boxOf(one), SIZE, one.isMirrored, 200, 100);
        expect(middle(mirrored(view)).x).toBeCloseTo(middle(view).x, 6);
        expect(mirrored(mirrored(view))).toEqual(view);
      }),
    );
  });

  it("stays mirrored when it is shown whole again", () => {
    expect(wholeAgain({ zoom: 3, x: 0.2, y: 0, isMirrored: true })).toEqual({
      ...WHOLE_PICTURE,
      isMirrored: true,
    });
  });
});

describe("a place in the picture", () => {
  it.each([
    ["the middle", false, 110, 50, { x: 200, y: 100 }],
    ["the upper left corner", false, 10, 0, { x: 0, y: 0 }],
    ["the upper left corner of a mirrored picture", true, 10, 0, { x: 400, y: 0 }],
    ["left of the picture", false, 0, 0, { x: -20, y: 0 }],
  ])("is that under the pointer: %s", (_where, isMirrored, clientX, clientY, place) => {
    const box = { left: 10, top: 0, width: 200, height: 100 };
    expect(placeInPicture(box, { widthPx: 400, heightPx: 200 }, isMirrored, clientX, clientY)).toEqual(place);
  });
});
