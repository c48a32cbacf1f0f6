import { GUIDE_WORDS } from "@/server/domain/mechanics/mark-guide";
import type { DraftMark } from "@/server/domain/reviews/draft";
import { guideShapes } from "./guide-shapes";
import { type PictureStage, ShapeDrawn } from "./shape-drawn";

/** A mark as it is shown, being written or sent. Frames count from 0, places are source pixels. */
export type ShownMark = Pick<DraftMark, "id" | "frame" | "untilFrame" | "guide" | "points" | "text">;

/** What {@link MarksDrawn} takes. */
export interface MarksDrawnProps {
  /** The marks of the clip on the picture, on whatever frames. */
  marks: readonly ShownMark[];
  /** The frame on the picture. */
  frame: number;
  stage: PictureStage;
}

/** Whether a mark shows on a frame: its own, or any to the last of its span. */
export function isShownOn(mark: Pick<DraftMark, "frame" | "untilFrame">, frame: number): boolean {
  return frame >= mark.frame && frame <= (mark.untilFrame ?? mark.frame);
}

/** The marks that show on the frame in sight, as children of the picture's `<svg>`; read only. */
export function MarksDrawn({ marks, frame, stage }: MarksDrawnProps) {
  return (
    <>
      {marks
        .filter((mark) => isShownOn(mark, frame))
        .map((mark) => (
          <g key={mark.id} data-mark={mark.guide}>
            <title>{markInWords(mark)}</title>
            {guideShapes(mark, stage).map((shape, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the shapes of one mark never change places
              <ShapeDrawn key={index} shape={shape} stage={stage} />
            ))}
          </g>
        ))}
    </>
  );
}

/** A mark as it is named to who cannot see it. @example markInWords(note) // "Note: chest over the knee" */
export function markInWords({ guide, text }: Pick<DraftMark, "guide" | "text">): string {
  return text === "" ? GUIDE_WORDS[guide] : `${GUIDE_WORDS[guide]}: ${text}`;
}
