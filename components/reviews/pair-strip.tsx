"use client";
import { Button } from "react-aria-components/Button";
import type { MarkedFrames } from "@/components/clips/event-strip";
import { filmRatio } from "@/components/clips/film-ratio";
import { FrameImage } from "@/components/clips/frame-image";
import { useThumbnails } from "@/components/clips/use-thumbnails";
import type { ClipView, CorrectionView } from "@/server/api/reviews/shapes";
import { DELIVERY_EVENTS, type DeliveryEvent, EVENT_WORDS } from "@/server/domain/mechanics/delivery";
import styles from "./pair-strip.module.css";

/** One of the two clips: its frames of the moments. */
export interface PairRow {
  word: "Old" | "New";
  clip: ClipView;
  marks: MarkedFrames;
}

/** What a {@link PairStrip} takes. */
export interface PairStripProps {
  older: PairRow;
  newer: PairRow;
  /** Those that are open: each stands under the moment it is judged on. */
  corrections: readonly CorrectionView[];
  /** Opens a moment on both clips; on one of them where the other has no mark. */
  onOpen: (event: DeliveryEvent) => void;
}

/** Two rows of the moments of a delivery, old above new, each pair on its moment. */
export function PairStrip({ older, newer, corrections, onOpen }: PairStripProps) {
  const oldPicture = useThumbnails(older.clip, Object.values(older.marks));
  const newPicture = useThumbnails(newer.clip, Object.values(newer.marks));
  return (
    <ol className={styles.pairs} aria-label="Moments of both deliveries">
      {DELIVERY_EVENTS.map((event) => {
        const [oldFrame, newFrame] = [older.marks[event], newer.marks[event]];
        const said = corrections.filter((each) => each.event === event);
        return (
          <li key={event} className={styles.pair}>
            <Button
              className={styles.open}
              isDisabled={oldFrame === undefined && newFrame === undefined}
              onPress={() => onOpen(event)}
              aria-label={`${EVENT_WORDS[event]}: old ${inWords(oldFrame)}, new ${inWords(newFrame)}`}
            >
              <span className={styles.word}>{EVENT_WORDS[event]}</span>
              <Half word="Old" clip={older.clip} frame={oldFrame} picture={oldPicture} />
              <Half word="New" clip={newer.clip} frame={newFrame} picture={newPicture} />
            </Button>
            {said.map((each) => (
              <p key={each.id} className={styles.said}>
                {each.cue || each.checkpointName}
              </p>
            ))}
          </li>
        );
      })}
    </ol>
  );
}

const inWords = (frame: number | undefined) => (frame === undefined ? "not marked" : `frame ${frame + 1}`);

interface HalfProps {
  word: string;
  clip: ClipView;
  frame: number | undefined;
  picture: (frame: number) => string | undefined;
}

function Half({ word, clip, frame, picture }: HalfProps) {
  const address = frame === undefined ? undefined : picture(frame);
  return (
    <span className={styles.half}>
      <span
        className={styles.frame}
        style={{ aspectRatio: filmRatio(clip) }}
        data-empty={frame === undefined ? "" : undefined}
      >
        {address ? <FrameImage address={address} className={styles.image} /> : null}
      </span>
      <span className={styles.marked}>
        {word} {frame === undefined ? "not marked" : frame + 1}
      </span>
    </span>
  );
}
