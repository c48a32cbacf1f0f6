import type { ClipView, CorrectionView, ReadingView } from "@/server/api/reviews/shapes";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { measureInWords } from "@/server/domain/mechanics/measure-value";
import styles from "./reading.module.css";

type Measured = Pick<ReadingView, "measurements" | "measureErrors" | "clips">;

/** What was measured of a correction's checkpoint on the clips here, clip by clip as they were filmed. */
export function measuresOf({ checkpointId }: Pick<CorrectionView, "checkpointId">, measured: Measured) {
  const { measurements, measureErrors, clips } = measured;
  return clips.flatMap((clip) =>
    measurements
      .filter((each) => each.checkpointId === checkpointId && each.clipId === clip.id)
      .map(({ id, kind, view, value, frame }) => {
        const error = measureErrors.find((one) => one.kind === kind && one.view === view) ?? null;
        const name = MEASURES[kind].words;
        return { id, name, words: measureInWords(kind, value, error), clip, frame };
      }),
  );
}

/** The measures of a correction in words, each with its error and the frame it was taken on. */
export function ReadingMeasures({
  measures,
  roundId,
}: {
  measures: ReturnType<typeof measuresOf>;
  roundId: string;
}) {
  if (measures.length === 0) return null;
  return (
    <ul className={styles.measures} aria-label="Measured">
      {measures.map(({ id, name, words, clip, frame }) => (
        <li key={id}>
          {name}: <b>{words}</b>
          <span className={styles.measuredOn}>
            {clipWord(clip, roundId)}, frame {frame + 1}
          </span>
        </li>
      ))}
    </ul>
  );
}

function clipWord(clip: ClipView, roundId: string): string {
  if (clip.roundId !== roundId) return "earlier clip";
  return clip.part === "reply" ? "new clip" : "first clip";
}
