"use client";
import { Button as OpenButton } from "react-aria-components/Button";
import { FrameImage } from "@/components/clips/frame-image";
import { useThumbnails } from "@/components/clips/use-thumbnails";
import { CorrectionMark } from "@/components/home/correction-mark";
import { Button } from "@/components/ui/button";
import type { ClipView, CorrectionView } from "@/server/api/reviews/shapes";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { happeningInWords } from "./correction-words";
import styles from "./reading.module.css";
import { ReadingPractice } from "./reading-practice";

/** What a {@link ReadingCorrection} takes. */
export interface ReadingCorrectionProps {
  number: number | null;
  correction: CorrectionView;
  /** The clip it was seen on, when it is among those here. */
  clip: ClipView | undefined;
  zone: string;
  today: string;
  isCurrent: boolean;
  mayTick: boolean;
  onShow: () => void;
  onPlaySlowly: () => void;
}

/** One correction as the family reads it: its picture, the cue, the drill, what was said since, and the days of practice. */
export function ReadingCorrection(props: ReadingCorrectionProps) {
  const { number, correction, clip, zone, today, isCurrent, onShow, onPlaySlowly } = props;
  const name = correction.cue || correction.checkpointName;
  const isWatchable = clip?.state === "ready" && correction.frame !== null;
  const since = correction.happenings.slice(1);
  return (
    <li className={styles.correction} data-current={isCurrent ? "" : undefined}>
      <div className={styles.head}>
        <OpenButton
          className={styles.open}
          isDisabled={!isWatchable}
          onPress={onShow}
          aria-label={isWatchable ? `Show the frame of: ${name}` : `No film of: ${name}`}
        >
          <Still clip={clip} frame={correction.frame} />
        </OpenButton>
        <div>
          <p className={styles.cue}>
            {number === null ? null : <b>{number}</b>}
            {name}
          </p>
          <p className={styles.about}>
            {correction.checkpointName}, {PHASE_WORDS[correction.phase].toLowerCase()}
          </p>
          <p className={styles.about}>
            <CorrectionMark state={correction.state} cameBack={correction.cameBack} />
          </p>
        </div>
      </div>
      {correction.drill ? (
        <p className={styles.drill}>
          <b>Drill</b> {correction.drill}
        </p>
      ) : null}
      {since.length > 0 ? (
        <ul className={styles.history}>
          {since.map((one) => (
            <li key={`${one.atMs} ${one.kind}`}>{happeningInWords(one, zone)}</li>
          ))}
        </ul>
      ) : null}
      {isWatchable ? (
        <div className={styles.acts}>
          <Button onPress={onShow}>See it</Button>
          <Button onPress={onPlaySlowly}>Play it slowly</Button>
        </div>
      ) : null}
      <ReadingPractice
        correctionId={correction.id}
        name={name}
        days={correction.tickableDays}
        practisedOn={correction.practisedOn}
        today={today}
        mayTick={props.mayTick}
      />
    </li>
  );
}

function Still({ clip, frame }: { clip: ClipView | undefined; frame: number | null }) {
  if (!clip || frame === null) return <span className={styles.still}>no frame</span>;
  return <StillOf clip={clip} frame={frame} />;
}

function StillOf({ clip, frame }: { clip: ClipView; frame: number }) {
  const address = useThumbnails(clip, [frame])(frame);
  return (
    <>
      <span className={styles.still}>
        {address ? (
          <FrameImage address={address} className={styles.image} />
        ) : clip.state === "expired" ? (
          "not kept"
        ) : null}
      </span>
      frame {frame + 1}
    </>
  );
}
