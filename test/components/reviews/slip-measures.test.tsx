import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { RoomSlip } from "@/components/reviews/room-slip";
import { type SlipRoom, slipMeasures } from "@/components/reviews/slip-measures";
import type { ClipView } from "@/server/api/reviews/shapes";
import type { DraftMeasure } from "@/server/domain/reviews/draft";
import { recapOf } from "@/server/domain/reviews/recap";
import { correction, keep, review } from "../../helpers/review-drafts";

const TURNED = (38 * Math.PI) / 180;

/** A knee bent by 38 degrees: the shank turned by as much out of the line of the thigh. */
const knee = (changes: Partial<DraftMeasure> = {}): DraftMeasure => ({
  ...{ id: "m1", kind: "front_knee_flexion", checkpointId: "hips-lead", clipId: "side" },
  ...{ frame: 142, untilFrame: null },
  points: [
    { frame: 142, x: 300, y: 100 },
    { frame: 142, x: 300, y: 200 },
    { frame: 142, x: 300 + 100 * Math.sin(TURNED), y: 200 + 100 * Math.cos(TURNED) },
  ],
  ...changes,
});

const side = {
  id: "side",
  view: "open_side",
  frameTimesMs: [0, 20, 40],
  capturedFps: 50,
} as unknown as ClipView;
const figure = { plusMinus: 3, isEnough: true, degreesOfFreedom: 20 };
const room = (errors: unknown[] = []): SlipRoom => ({
  athlete: { throws: "right" } as SlipRoom["athlete"],
  measureErrors: errors as SlipRoom["measureErrors"],
  clips: [side],
});
const known = [{ kind: "front_knee_flexion", view: "open_side", sameDay: figure, sameFrame: figure }];

describe("the measures on a slip", () => {
  it("are those of the row's checkpoint, with their error or that it is not yet known", () => {
    const [own] = slipMeasures("hips-lead", [knee(), knee({ id: "m2", checkpointId: "other" })], room());
    expect(own?.words).toMatch(/38°, error not yet known, frame 143$/);
    expect(slipMeasures("hips-lead", [knee()], room(known))[0]?.words).toMatch(/38° ± 3, frame 143$/);
  });

  it("are none for a row without a checkpoint, nor from a clip that is not here", () => {
    expect(slipMeasures(null, [knee({ checkpointId: null })], room())).toEqual([]);
    expect(slipMeasures("hips-lead", [knee({ clipId: "gone" })], room())).toEqual([]);
  });

  it("run as the frames do, and leave the draft's order alone", () => {
    const drafted = [knee({ id: "late", frame: 150 }), knee({ id: "early", frame: 140 })];
    expect(slipMeasures("hips-lead", drafted, room()).map((each) => each.id)).toEqual(["early", "late"]);
    expect(drafted[0]?.id).toBe("late");
  });

  it("stand under the correction and under the keep of their checkpoint", () => {
    const draft = review({
      corrections: [correction()],
      keeps: [keep({ checkpointId: "brace" }), keep({ id: "k2" })],
      measures: [
        knee(),
        knee({
          ...{ id: "m2", checkpointId: "brace", frame: 160 },
          points: knee().points.map((point) => ({ ...point, frame: 160 })),
        }),
      ],
    });
    const recap = recapOf({
      corrections: draft.corrections.map((each) => ({ ...each, checkpointName: "Hips lead" })),
      keeps: draft.keeps,
    });
    const markup = renderToStaticMarkup(
      <RoomSlip recap={recap} draft={draft} room={room(known)} onOpen={() => undefined} />,
    );
    expect(markup.match(/38° ± 3, frame 143/g)).toHaveLength(1);
    expect(markup.split("Keep</h3>")[1]?.match(/38° ± 3, frame 161/g)).toHaveLength(1);
  });
});
