import { markInWords } from "@/components/marks/marks-drawn";
import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import { timeBaseOf } from "@/server/domain/clips/time-base";
import { errorOf } from "@/server/domain/mechanics/measure-error";
import { measureInWords, measureValue } from "@/server/domain/mechanics/measure-value";
import type { DraftMark, DraftMeasure } from "@/server/domain/reviews/draft";

/** What a measure's worth depends on besides its points. */
export interface MeasuredOn {
  room: Pick<RoomView, "athlete" | "measureErrors">;
  clip: ClipView;
}

/** A measure's value with its error in words, or the sentence that says why it has none. */
export function measureOutcome(
  measure: Pick<DraftMeasure, "kind" | "points" | "frame" | "untilFrame">,
  { room, clip }: MeasuredOn,
): string {
  const { view, frameTimesMs } = clip;
  const result = measureValue(measure, {
    view,
    frameTimesMs,
    throws: room.athlete.throws,
    timeBase: timeBaseOf(clip),
  });
  if ("problem" in result) return result.problem;
  return measureInWords(measure.kind, result.value, errorOf(room.measureErrors, measure.kind, view));
}

/**
 * What is written on the picture of an outcome: the figure and its margin alone; which way it lies the picture shows.
 * @example outcomeOnPicture("82 % ± 2 of standing height") // "82 % ± 2"
 * @example outcomeOnPicture("4° toward the plate, error not yet known") // "4° ± not known"
 */
export function outcomeOnPicture(outcome: string): string {
  const [, figure, margin] = /^(−?[\d.]+(?:°| %| s))( ± [\d.]+)?/.exec(outcome) ?? [];
  return figure === undefined ? outcome : `${figure}${margin ?? " ± not known"}`;
}

/** On which frames something is, counted from 1 as on the screen. @example framesInWords({ frame: 39, untilFrame: 43 }) // "frames 40 to 44" */
export function framesInWords({ frame, untilFrame }: Pick<DraftMark, "frame" | "untilFrame">): string {
  return untilFrame === null ? `frame ${frame + 1}` : `frames ${frame + 1} to ${untilFrame + 1}`;
}

/** A mark as a list tells it. @example "Plumb line, frames 40 to 44" */
export function markLine(mark: DraftMark): string {
  return `${markInWords(mark)}, ${framesInWords(mark)}`;
}
