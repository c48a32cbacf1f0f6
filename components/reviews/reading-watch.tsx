"use client";
import type { Ref } from "react";
import { Player } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import { MarksDrawn } from "@/components/marks/marks-drawn";
import { RadioChoice } from "@/components/ui/radio-choice";
import type { ClipView, ReadingView } from "@/server/api/reviews/shapes";
import { clipFacts, clipName } from "./clip-words";
import styles from "./reading.module.css";
import type { ClipInHand } from "./use-clip-in-hand";

/** What a {@link ReadingWatch} takes. */
export interface ReadingWatchProps {
  place: Ref<HTMLDivElement>;
  inHand: ClipInHand;
  clips: readonly ClipView[];
  reading: ReadingView;
}

/** The clip in hand, which stays in sight while the page is read. */
export function ReadingWatch({ place, inHand: { clip, player, goTo }, clips, reading }: ReadingWatchProps) {
  return (
    <div ref={place} className={styles.watch} data-print="no">
      {clips.length > 1 ? (
        <RadioChoice
          className={styles.clips}
          label="Clip"
          options={clips.map((each) => ({ value: each.id, label: choiceWord(each, clips, reading) }))}
          value={clip.id}
          onChange={(clipId) => goTo(clipId)}
        />
      ) : null}
      <Player
        player={player}
        label={`${partWord(clip, reading)} clip`}
        isCompact
        state={filmFacts(clip, reading.drawing)}
        overlay={(stage) => (
          <MarksDrawn marks={marksOf(clip, reading.marks)} frame={player.frame} stage={stage} />
        )}
      />
      <p className={styles.which}>{[clipName(clip), ...clipFacts(clip)].join(", ")}</p>
    </div>
  );
}

/** The marks that were drawn on a clip, on whatever frames. */
export function marksOf(clip: ClipView, marks: ReadingView["marks"]): ReadingView["marks"] {
  return marks.filter((mark) => mark.clipId === clip.id);
}

/** A clip among the others: by its part where that tells it, else by its view. */
function choiceWord(clip: ClipView, clips: readonly ClipView[], reading: ReadingView): string {
  const word = partWord(clip, reading);
  const isAlone = clips.filter((each) => partWord(each, reading) === word).length === 1;
  return isAlone ? `${word} clip` : clipName(clip, clips);
}

function partWord(clip: ClipView, reading: ReadingView): string {
  if (clip.roundId !== reading.round.id) return "Earlier";
  return clip.part === "first" ? "First" : "New";
}
