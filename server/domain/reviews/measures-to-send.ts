import { timeBaseOf } from "@/server/domain/clips/time-base";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { type MeasureResult, measureValue } from "@/server/domain/mechanics/measure-value";
import type { ThrowingHand } from "@/server/domain/people/person";
import type { DraftMeasure, ReviewDraft } from "./draft";

/** A clip as measures are computed on it. */
export interface MeasurableClip {
  id: string;
  view: CameraView | null;
  pitchType: string | null;
  capturedFps: number | null;
  frameTimesMs: readonly number[];
}

/** Who throws on the clips of a round. */
export interface MeasuringFacts {
  throws: ThrowingHand;
  clips: readonly MeasurableClip[];
}

/** A measure that can be sent: where its clip was filmed from, and what it is worth. */
export type MeasureToSend = Omit<DraftMeasure, "id"> & {
  view: CameraView;
  pitchType: string | null;
  value: number;
};

type Measured = Pick<ReviewDraft, "measures" | "marks">;

/**
 * What the measures and marks of a draft still need, as fragments for one sentence; empty when they can be sent. Frames
 * and clips are held against the round by missingToSend and missingToSettle.
 * @example measuresMissing({ measures: [knee], marks: [] }, ofAFrontClip)
 * // ["take off the measure on frame 91: front-knee flexion is measured from the open side or the closed side, not from the front"]
 */
export function measuresMissing({ measures, marks }: Measured, facts: MeasuringFacts): string[] {
  const refused = measures.flatMap((measure) => {
    const result = resultOf(measure, facts);
    return result && "problem" in result
      ? [`take off the measure on frame ${measure.frame + 1}: ${asFragment(result.problem)}`]
      : [];
  });
  const wordless = marks.some(({ guide, text }) => guide === "note" && text.trim() === "");
  return [...refused, ...(wordless ? ["write the words of a note on the picture, or take it off"] : [])];
}

/**
 * The measures of a draft with their values, in the order taken. The draft must be ready ({@link measuresMissing} found
 * nothing).
 * @throws Error for a measure without a value
 */
export function measuresToSend(
  { measures }: Pick<Measured, "measures">,
  facts: MeasuringFacts,
): MeasureToSend[] {
  return measures.map((taken) => {
    const { id, ...measure } = taken;
    const result = resultOf(taken, facts);
    const clip = facts.clips.find((each) => each.id === taken.clipId);
    if (!clip?.view || !result || "problem" in result) {
      throw new Error(`${MEASURES[measure.kind].words} has no value.`);
    }
    return { ...measure, view: clip.view, pitchType: clip.pitchType, value: result.value };
  });
}

/** Null for a measure on a clip that is not in the round. */
function resultOf(measure: DraftMeasure, { throws, clips }: MeasuringFacts): MeasureResult | null {
  const clip = clips.find((each) => each.id === measure.clipId);
  return clip ? measureValue(measure, { ...clip, throws, timeBase: timeBaseOf(clip) }) : null;
}

const asFragment = (sentence: string) =>
  `${sentence.charAt(0).toLowerCase()}${sentence.slice(1).replace(/\.$/, "")}`;
