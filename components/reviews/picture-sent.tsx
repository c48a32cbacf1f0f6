import { MarksDrawn } from "@/components/marks/marks-drawn";
import type { PictureStage } from "@/components/marks/shape-drawn";
import { MeasuresDrawn } from "@/components/measures/measures-drawn";
import type { RoomView } from "@/server/api/reviews/shapes";
import { errorOf } from "@/server/domain/mechanics/measure-error";
import { measureInWords } from "@/server/domain/mechanics/measure-value";
import { outcomeOnPicture } from "./picture-words";

/** What a {@link PictureSent} takes. */
export interface PictureSentProps {
  room: Pick<RoomView, "marks" | "measurements" | "measureErrors">;
  clipId: string;
  /** The frame on the picture. */
  frame: number;
  stage: PictureStage;
}

/** What reviews that were sent have measured and drawn on a clip: children of the picture's `svg`, read only. */
export function PictureSent({ room, clipId, frame, stage }: PictureSentProps) {
  const { measurements, marks, measureErrors } = room;
  const measures = measurements
    .filter((row) => row.clipId === clipId)
    .map((row) => ({
      ...row,
      words: outcomeOnPicture(
        measureInWords(row.kind, row.value, errorOf(measureErrors, row.kind, row.view)),
      ),
    }));
  return (
    <>
      <MarksDrawn marks={marks.filter((row) => row.clipId === clipId)} frame={frame} stage={stage} />
      <MeasuresDrawn measures={measures} frame={frame} stage={stage} />
    </>
  );
}
