"use client";
import { SelectField } from "@/components/ui/select-field";
import type { MarkedFrames } from "./event-strip";
import { loopEnds } from "./loop-ends";
import styles from "./player-controls.module.css";
import type { LoopSpan } from "./stage/loop-span";
import type { ClipPlayer } from "./use-clip-player";

/** What a {@link LoopChoice} takes. */
export interface LoopChoiceProps {
  player: ClipPlayer;
  marks: MarkedFrames;
  loop: LoopSpan;
}

/** Between which two moments the clip is played over and over. */
export function LoopChoice({ player, marks, loop }: LoopChoiceProps) {
  const ends = loopEnds(marks, player.clip.frameTimesMs.length - 1);
  const options = (isFit: (frame: number) => boolean) =>
    ends.filter(({ frame }) => isFit(frame)).map(({ frame, label }) => ({ value: String(frame), label }));
  return (
    <div className={styles.loop}>
      <SelectField
        label="Loop from"
        options={options((frame) => frame < loop.to)}
        value={String(loop.from)}
        onChange={(from) => player.setLoop({ ...loop, from: Number(from) })}
      />
      <SelectField
        label="to"
        options={options((frame) => frame > loop.from)}
        value={String(loop.to)}
        onChange={(to) => player.setLoop({ ...loop, to: Number(to) })}
      />
    </div>
  );
}
