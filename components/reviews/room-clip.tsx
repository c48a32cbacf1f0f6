"use client";
import { EventStrip, type MarkedFrames } from "@/components/clips/event-strip";
import { KeyList } from "@/components/clips/key-list";
import { Player } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import { usePoster } from "@/components/clips/use-poster";
import { RadioChoice } from "@/components/ui/radio-choice";
import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";
import { clipFacts, clipName } from "./clip-words";
import styles from "./room.module.css";
import { RoomTimeBase } from "./room-time-base";

/** What a {@link RoomClip} takes. */
export interface RoomClipProps {
  player: ClipPlayer;
  clip: ClipView;
  clips: readonly ClipView[];
  drawing: RoomView["drawing"];
  marks: MarkedFrames;
  mayGivePoster: boolean;
  onClip: (clipId: string) => void;
  onMark?: (event: DeliveryEvent, frame: number | null) => void;
}

/** The clip in hand with its strip of moments; several clips of one day by their view. */
export function RoomClip(props: RoomClipProps) {
  const { player, clip, clips, drawing, marks, mayGivePoster, onClip, onMark } = props;
  usePoster(player, mayGivePoster);
  return (
    <div className={styles.clipSide}>
      {clips.length > 1 ? (
        <RadioChoice
          className={styles.choice}
          label="Clip"
          options={clips.map((each) => ({ value: each.id, label: clipName(each, clips) }))}
          value={clip.id}
          onChange={onClip}
        />
      ) : null}
      <Player player={player} label={`${clipName(clip, clips)} clip`} state={filmFacts(clip, drawing)} />
      <p className={styles.facts}>
        {[...(clips.length > 1 ? [] : [clipName(clip).toLowerCase()]), ...clipFacts(clip)].map((fact) => (
          <span key={fact}>{fact}</span>
        ))}
        {clip.note ? <span>“{clip.note}”</span> : null}
      </p>
      <EventStrip
        player={player}
        marks={marks}
        capturedFps={clip.capturedFps}
        {...(onMark ? { onMark } : {})}
      />
      <RoomTimeBase clip={clip} marks={marks} mayChange={onMark !== undefined} />
      <KeyList hasMarks={onMark !== undefined} />
    </div>
  );
}
