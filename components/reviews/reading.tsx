"use client";
import { useRef, useState } from "react";
import { NoCopyNote } from "@/components/clips/no-copy-note";
import { Player } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { Notice } from "@/components/ui/notice";
import { RadioChoice } from "@/components/ui/radio-choice";
import { Section } from "@/components/ui/section";
import type { ClipView, CorrectionView, ReadingView } from "@/server/api/reviews/shapes";
import { asTheDeliveryRuns, countInWords } from "@/server/domain/reviews/recap";
import { roundInWords } from "@/server/domain/reviews/round-in-words";
import { clipFacts, clipName } from "./clip-words";
import styles from "./reading.module.css";
import { ReadingCorrection } from "./reading-correction";
import { ReadingKeeps, ReadingReply, ReadingWords } from "./reading-parts";
import { useClipInHand } from "./use-clip-in-hand";

/** Half a second to either side of a frame shows what leads to it and what it leads to. Common practice, no source. */
const AROUND_MS = 500;

/** What a {@link Reading} takes. */
export interface ReadingProps {
  reading: ReadingView;
  /** False for staff who look in. */
  mayTick: boolean;
}

/** A round as the family reads it: the clip above, and each correction opens on its frame. */
export function Reading({ reading, mayTick }: ReadingProps) {
  const [first, ...others] = inOrderOfUse(reading);
  if (first) return <WithClips reading={reading} mayTick={mayTick} clips={[first, ...others]} />;
  return <Notice isStatic>There is no clip in this round any more.</Notice>;
}

function WithClips({
  reading,
  mayTick,
  clips,
}: ReadingProps & { clips: readonly [ClipView, ...ClipView[]] }) {
  const { round, zone, today } = reading;
  const { clip, player, goTo } = useClipInHand(clips);
  const [current, setCurrent] = useState<string | null>(null);
  const watch = useRef<HTMLDivElement>(null);
  const own = asTheDeliveryRuns(reading.corrections.filter((each) => each.roundId === round.id));
  const carried = asTheDeliveryRuns(reading.corrections.filter((each) => each.roundId !== round.id));
  useClipKeys({ step: player.step, toggle: player.toggle });

  function show(correction: CorrectionView) {
    if (correction.clipId === null || correction.frame === null) return;
    setCurrent(correction.id);
    goTo(correction.clipId, correction.frame);
    watch.current?.scrollIntoView({ block: "nearest" });
  }

  function playSlowly(correction: CorrectionView) {
    const { frame } = correction;
    if (correction.clipId !== clip.id || frame === null) return show(correction);
    setCurrent(correction.id);
    player.playThrough({ ...around(clip, frame), rest: frame, speed: 0.25 });
    watch.current?.scrollIntoView({ block: "nearest" });
  }

  const list = (corrections: readonly CorrectionView[], isNumbered: boolean) => (
    <ol className={styles.corrections}>
      {corrections.map((each, index) => (
        <ReadingCorrection
          key={each.id}
          number={isNumbered ? index + 1 : null}
          correction={each}
          clip={reading.clips.find((one) => one.id === each.clipId)}
          isCurrent={current === each.id}
          onShow={() => show(each)}
          onPlaySlowly={() => playSlowly(each)}
          {...{ zone, today, mayTick }}
        />
      ))}
    </ol>
  );

  return (
    <>
      <div ref={watch} className={styles.watch} data-print="no">
        {clips.length > 1 ? <ClipChoice clips={clips} chosen={clip.id} onChoose={goTo} /> : null}
        <Player
          player={player}
          label={`${partWord(clip, reading)} clip`}
          isCompact
          state={filmFacts(clip, reading.drawing)}
        />
        <p className={styles.which}>{[clipName(clip), ...clipFacts(clip)].join(", ")}</p>
      </div>
      <NoCopyNote conversion={clip.conversion} />
      {reading.sent.length === 0 ? <Notice isStatic>{roundInWords(round, today, zone)}</Notice> : null}
      {round.retakeReason ? (
        <Notice kind="attention" isStatic title="The coach asks for another clip">
          {round.retakeReason}
        </Notice>
      ) : null}
      {own.length > 0 ? (
        <Section title={`Work on ${countInWords(own.length)}`}>{list(own, true)}</Section>
      ) : null}
      {carried.length > 0 ? <Section title="Carried over from before">{list(carried, false)}</Section> : null}
      <ReadingKeeps
        reading={reading}
        onShow={(clipId, frame) => {
          setCurrent(null);
          goTo(clipId, frame);
        }}
      />
      <ReadingWords reading={reading} />
      <ReadingReply reading={reading} />
    </>
  );
}

/** The round's own clips first; those of earlier rounds only while their film is kept. */
function inOrderOfUse({ clips, round }: ReadingView): ClipView[] {
  const own = clips.filter((clip) => clip.roundId === round.id);
  const earlier = clips.filter((clip) => clip.roundId !== round.id && clip.state !== "expired");
  return [...own, ...earlier];
}

/** The frames half a second before and after one, within the clip. */
function around(clip: ClipView, frame: number): { from: number; to: number } {
  const times = clip.frameTimesMs;
  const atMs = times[frame] ?? 0;
  const from = times.findIndex((timeMs) => timeMs >= atMs - AROUND_MS);
  const to = times.findLastIndex((timeMs) => timeMs <= atMs + AROUND_MS);
  return { from: Math.max(0, from), to };
}

function partWord(clip: ClipView, reading: ReadingView): string {
  if (clip.roundId !== reading.round.id) return "Earlier";
  return clip.part === "first" ? "First" : "New";
}

interface ClipChoiceProps {
  clips: readonly ClipView[];
  chosen: string;
  onChoose: (clipId: string) => void;
}

function ClipChoice({ clips, chosen, onChoose }: ClipChoiceProps) {
  return (
    <RadioChoice
      className={styles.clips}
      label="Clip"
      options={clips.map((clip) => ({ value: clip.id, label: clipName(clip, clips) }))}
      value={chosen}
      onChange={(clipId) => onChoose(clipId)}
    />
  );
}
