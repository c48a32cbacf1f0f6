"use client";
import { EventStrip, type MarkedFrames } from "@/components/clips/event-strip";
import { KeyList } from "@/components/clips/key-list";
import { Player, type PlayerProps } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import { usePoster } from "@/components/clips/use-poster";
import { RadioChoice } from "@/components/ui/radio-choice";
import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";
import { clipFacts, clipName } from "./clip-words";
import { PictureActs } from "./picture-acts";
import { PictureList } from "./picture-list";
import { PictureOverlay } from "./picture-overlay";
import styles from "./room.module.css";
import { RoomTimeBase } from "./room-time-base";
import type { PictureTools } from "./use-picture-tools";

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
  /** The means to measure and to draw on it; where there are none, `overlay` shows what was. */
  tools?: PictureTools;
  overlay?: PlayerProps["overlay"];
}

/** The clip in hand with its strip of moments; several clips of one day by their view. */
export function RoomClip(props: RoomClipProps) {
  const { player, clip, clips, drawing, marks, mayGivePoster, onClip, onMark, tools, overlay } = props;
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
      <Player
        player={player}
        label={`${clipName(clip, clips)} clip`}
        state={filmFacts(clip, drawing)}
        marks={marks}
        isHandTaken={isHandTaken(tools)}
        overlay={tools ? (stage) => <PictureOverlay tools={tools} stage={stage} /> : overlay}
      />
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
      {tools ? <PictureActs tools={tools} /> : null}
      {tools ? <PictureList tools={tools} /> : null}
      <RoomTimeBase clip={clip} marks={marks} mayChange={onMark !== undefined} />
      <KeyList hasMarks={onMark !== undefined} />
    </div>
  );
}

/** Whether presses on the picture are the tool's, to place points or to draw. */
export function isHandTaken(tools: PictureTools | undefined): boolean {
  return tools !== undefined && (tools.points !== null || tools.pencil !== null);
}
