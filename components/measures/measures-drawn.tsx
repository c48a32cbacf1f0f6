import { type PictureStage, ShapeDrawn } from "@/components/marks/shape-drawn";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { type DrawnMeasure, measureShapes, wordsPlace } from "./measure-shapes";

/** What a {@link MeasuresDrawn} takes. */
export interface MeasuresDrawnProps {
  /** The measures of the clip on the picture, on whatever frames; what each is worth, in words, is written beside it. */
  measures: readonly (DrawnMeasure & { id: string; words?: string })[];
  /** The frame on the picture. */
  frame: number;
  stage: PictureStage;
}

/**
 * The measures that were taken on the frame in sight, as children of the picture's `<svg>`; read only. What they are
 * worth is written over all their lines.
 */
export function MeasuresDrawn({ measures, frame, stage }: MeasuresDrawnProps) {
  const here = measures
    .map((measure) => ({ measure, shapes: measureShapes(measure, frame, stage) }))
    .filter(({ shapes }) => shapes.length > 0);
  return (
    <>
      {here.map(({ measure, shapes }) => (
        <g key={measure.id} data-measure={measure.kind}>
          <title>{[MEASURES[measure.kind].words, measure.words].filter(Boolean).join(" ")}</title>
          {shapes.map((shape, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the shapes of one measure never change places
            <ShapeDrawn key={index} shape={shape} stage={stage} />
          ))}
        </g>
      ))}
      {here.map(({ measure }) => {
        const at = measure.frame === frame ? wordsPlace(measure) : null;
        return measure.words && at ? (
          <ShapeDrawn key={measure.id} shape={{ kind: "words", at, text: measure.words }} stage={stage} />
        ) : null;
      })}
    </>
  );
}
