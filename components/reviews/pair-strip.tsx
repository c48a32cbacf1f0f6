"use client";
import { Button } from "react-aria-components/Button";
import { MarkButton, type MarkedFrames } from "@/components/clips/event-strip";
import { filmRatio } from "@/components/clips/film-ratio";
import { FrameImage } from "@/components/clips/frame-image";
import type { ClipPair } from "@/components/clips/use-clip-pair";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import { useThumbnails } from "@/components/clips/use-thumbnails";
import type { CorrectionView } from "@/server/api/reviews/shapes";
import { DELIVERY_EVENTS, type DeliveryEvent, EVENT_WORDS } from "@/server/domain/mechanics/delivery";
import styles from "./pair-strip.module.css";

/** One of the two clips: its frames of the moments. */
export interface PairRow {
  player: ClipPlayer;
  marks: MarkedFrames;
  /** Marks a moment on the clip, or with null on no frame; left out where it is only read. */
  onMark?: (event: DeliveryEvent, frame: number | null) => void;
}

/** What a {@link PairStrip} takes. */
export interface PairStripProps {
  pair: ClipPair;
  older: PairRow;
  newer: PairRow;
  /** Those that are open: each stands under the moment it is judged on. */
  corrections: readonly CorrectionView[];
}

/** Two rows of the moments of a delivery, old above new, each pair on its moment. */
export function PairStrip({ pair, older, newer, corrections }: PairStripProps) {
  const oldPicture = useThumbnails(older.player.clip, Object.values(older.marks));
  const newPicture = useThumbnails(newer.player.clip, Object.values(newer.marks));
  /* On both clips; on one of them where the other has no mark. */
  const open = (oldFrame: number | undefined, newFrame: number | undefined) => {
    if (oldFrame !== undefined && newFrame !== undefined) pair.showPair(oldFrame, newFrame);
    else if (newFrame !== undefined) newer.player.show(newFrame);
    else if (oldFrame !== undefined) older.player.show(oldFrame);
  };
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
              onPress={() => open(oldFrame, newFrame)}
              aria-label={`${EVENT_WORDS[event]}: old ${inWords(oldFrame)}, new ${inWords(newFrame)}`}
            >
              <span className={styles.word}>{EVENT_WORDS[event]}</span>
              <Half word="Old" player={older.player} frame={oldFrame} picture={oldPicture} />
              <Half word="New" player={newer.player} frame={newFrame} picture={newPicture} />
            </Button>
            <Marking row={older} event={event} whose="old" />
            <Marking row={newer} event={event} whose="new" />
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

function Marking({ row, event, whose }: { row: PairRow; event: DeliveryEvent; whose: string }) {
  const { player, marks, onMark } = row;
  if (!onMark || player.clip.state !== "ready") return null;
  return <MarkButton {...{ event, player, onMark, whose }} frame={marks[event]} />;
}

interface HalfProps {
  word: "Old" | "New";
  player: ClipPlayer;
  frame: number | undefined;
  picture: (frame: number) => string | undefined;
}

function Half({ word, player, frame, picture }: HalfProps) {
  const address = frame === undefined ? undefined : picture(frame);
  const isHere = frame !== undefined && frame === player.wanted;
  return (
    <span className={styles.half} data-here={isHere ? "" : undefined}>
      <span
        className={styles.frame}
        style={{ aspectRatio: filmRatio(player.clip) }}
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
