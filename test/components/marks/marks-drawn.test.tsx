import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { isShownOn, MarksDrawn, type ShownMark } from "@/components/marks/marks-drawn";
import { strokePath } from "@/components/marks/stroke-path";

const STAGE = { widthPx: 1280, heightPx: 720, isMirrored: false, pxPerSource: 0.5 };
const PLUMB: ShownMark = {
  ...{ id: "m1", frame: 40, untilFrame: null, guide: "plumb", points: [{ x: 600, y: 100 }], text: "" },
};
const NOTE: ShownMark = { ...PLUMB, id: "m2", guide: "note", untilFrame: 44, text: "chest over the knee" };

const drawn = (marks: ShownMark[], frame: number, stage = STAGE) =>
  renderToStaticMarkup(<MarksDrawn marks={marks} frame={frame} stage={stage} />);

describe("marks on the picture", () => {
  it.each([
    [39, false, false],
    [40, true, true],
    [41, false, true],
    [44, false, true],
    [45, false, false],
  ])("show on their own frame or their span and on no other: frame %i", (frame, own, span) => {
    expect(isShownOn(PLUMB, frame)).toBe(own);
    expect(isShownOn(NOTE, frame)).toBe(span);
  });

  it("are named to who cannot see them", () => {
    expect(drawn([PLUMB, NOTE], 40)).toContain("<title>Plumb line</title>");
    expect(drawn([PLUMB, NOTE], 40)).toContain("<title>Note: chest over the knee</title>");
    expect(drawn([PLUMB, NOTE], 50)).toBe("");
  });

  it("draw every line twice, dark beneath light, so that it is seen on any ground", () => {
    expect(drawn([PLUMB], 40).match(/<line /g)).toHaveLength(2);
  });

  it("keep a dot's size on the screen when the picture is enlarged", () => {
    const radius = (pxPerSource: number) =>
      Number(/r="([\d.]+)"/.exec(drawn([PLUMB], 40, { ...STAGE, pxPerSource }))?.[1]);
    expect(radius(0.5) * 0.5).toBeCloseTo(radius(4) * 4);
  });

  it("draw nothing on a stage that is not laid out yet", () => {
    expect(drawn([PLUMB, NOTE], 40, { ...STAGE, pxPerSource: 0 })).not.toContain("Infinity");
  });

  it("keep a note readable in a mirrored picture", () => {
    expect(drawn([NOTE], 40, { ...STAGE, isMirrored: true })).toContain("scale(-1 1)");
    expect(drawn([NOTE], 40)).toContain("scale(1 1)");
  });

  it("draw a stroke of the pencil as one closed outline", () => {
    const path = strokePath(
      [
        { x: 10, y: 10 },
        { x: 40, y: 12 },
        { x: 80, y: 40 },
      ],
      6,
    );
    expect(path).toMatch(/^M[\d. -]+(Q[\d. -]+)+Z$/);
  });
});
