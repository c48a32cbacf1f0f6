"use client";
import { Button } from "react-aria-components/Button";
import { joinClasses } from "@/components/ui/join-classes";
import {
  DELIVERY_EVENTS,
  type DeliveryEvent,
  EVENT_WORDS,
  isApproximate,
} from "@/server/domain/mechanics/delivery";
import { EventDurations } from "./event-durations";
import styles from "./event-strip.module.css";
import { filmRatio } from "./film-ratio";
import { FrameImage } from "./frame-image";
import type { ClipPlayer } from "./use-clip-player";
import { useThumbnails } from "./use-thumbnails";

/** The frame of each marked moment on one clip. */
export type MarkedFrames = Partial<Record<DeliveryEvent, number>>;

/** What an {@link EventStrip} takes. */
export interface EventStripProps {
  player: ClipPlayer;
  marks: MarkedFrames;
  /** Frames a second as recorded, for the times between the moments; null while nobody has said. */
  capturedFps: number | null;
  /** Called with the frame a moment is marked on, or null to take the mark away; without it the strip is only read. */
  onMark?: (event: DeliveryEvent, frame: number | null) => void;
}

/** The six moments of a delivery as small pictures of their frames, the way to mark them, and the times between. */
export function EventStrip(props: EventStripProps) {
  const { player, marks, capturedFps } = props;
  return (
    <>
      <Moments {...props} />
      <EventDurations {...{ marks, capturedFps }} frameTimesMs={player.clip.frameTimesMs} />
    </>
  );
}

function Moments({ player, marks, onMark }: EventStripProps) {
  const picture = useThumbnails(player.clip, Object.values(marks));
  return (
    <ol className={styles.strip} aria-label="Moments of the delivery">
      {DELIVERY_EVENTS.map((event, index) => {
        const frame = marks[event];
        return (
          <li key={event} className={styles.moment}>
            <Picture
              event={event}
              frame={frame}
              place={index + 1}
              ratio={filmRatio(player.clip)}
              address={frame === undefined ? undefined : picture(frame)}
              isHere={frame === player.wanted}
              onOpen={() => {
                if (frame !== undefined) player.show(frame);
              }}
            />
            {onMark && player.clip.state === "ready" ? (
              <MarkButton event={event} frame={frame} player={player} onMark={onMark} />
            ) : null}
          </li>
        );
      })}
    </ol>
  );
}

interface PictureProps {
  event: DeliveryEvent;
  frame: number | undefined;
  place: number;
  ratio: number;
  address: string | undefined;
  isHere: boolean;
  onOpen: () => void;
}

function Picture({ event, frame, place, ratio, address, isHere, onOpen }: PictureProps) {
  const word = EVENT_WORDS[event];
  const isUnsure = isApproximate(event);
  const marked =
    frame === undefined
      ? isUnsure
        ? "optional"
        : "not marked"
      : `${isUnsure ? "about " : ""}frame ${frame + 1}`;
  return (
    <Button
      className={joinClasses(styles.open, isHere && styles.here)}
      isDisabled={frame === undefined}
      onPress={onOpen}
      aria-label={`${word}, ${marked}${frame === undefined ? "" : ": show"}`}
    >
      <span
        className={joinClasses(styles.frame, frame === undefined && styles.empty)}
        style={{ aspectRatio: ratio }}
      >
        {address ? (
          <FrameImage address={address} className={styles.image} />
        ) : (
          <span aria-hidden="true">{place}</span>
        )}
      </span>
      <span className={styles.word}>{word}</span>
      <span className={styles.marked}>{marked}</span>
    </Button>
  );
}

/** What a {@link MarkButton} takes. */
export interface MarkButtonProps {
  event: DeliveryEvent;
  /** The frame it is marked on; undefined while it is on none. */
  frame: number | undefined;
  player: ClipPlayer;
  onMark: (event: DeliveryEvent, frame: number | null) => void;
  /** Which of two clips it marks, in a word; left out where there is one. */
  whose?: string;
}

/** Marks a moment on the frame in sight, or takes the mark from it. */
export function MarkButton({ event, frame, player, onMark, whose }: MarkButtonProps) {
  const here = player.inHand;
  const isMarkedHere = frame === here;
  const act = isMarkedHere ? "Unmark" : frame === undefined ? "Mark" : "Move";
  const words = [act, whose, act === "Move" ? "here" : undefined].filter(Boolean).join(" ");
  return (
    <Button
      className={styles.mark}
      isDisabled={player.picture !== "ready"}
      onPress={() => onMark(event, isMarkedHere ? null : here)}
      aria-label={`${words}: ${EVENT_WORDS[event]}${isMarkedHere ? "" : ` on frame ${here + 1}`}`}
    >
      {words}
    </Button>
  );
}
