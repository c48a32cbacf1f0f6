"use client";
import { useRef } from "react";
import { NoCopyNote } from "@/components/clips/no-copy-note";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import { hush } from "@/components/voice/use-voice-player";
import type { ClipView, CorrectionView, ReadingView } from "@/server/api/reviews/shapes";
import { countInWords } from "@/server/domain/reviews/recap";
import { roundInWords } from "@/server/domain/reviews/round-in-words";
import { ReadingCorrection } from "./reading-correction";
import { measuresOf } from "./reading-measures";
import { ReadingKeeps, ReadingReply, ReadingWords } from "./reading-parts";
import { type FilmPlace, placesOf } from "./reading-places";
import { ReadingSlides } from "./reading-slides";
import { ReadingWatch } from "./reading-watch";
import { slowSpan } from "./slow-span";
import { useClipInHand } from "./use-clip-in-hand";
import { useSlowLoop } from "./use-slow-loop";

/** What a {@link ReadingRound} takes. */
export interface ReadingRoundProps {
  reading: ReadingView;
  clips: readonly [ClipView, ...ClipView[]];
  /** In the order they are read. */
  corrections: readonly CorrectionView[];
  /** The one in sight, from 0. */
  current: number;
  onCurrent: (index: number) => void;
  /** Opens the old clip and the new one beside each other. */
  onTogether: (correction: CorrectionView) => void;
  mayTick: boolean;
}

/** A clip above, and beneath it the corrections to be swiped through: the picture stands on the frame of the one in sight. */
export function ReadingRound(props: ReadingRoundProps) {
  const { reading, clips, corrections, current, onCurrent, mayTick } = props;
  const { round, zone, today } = reading;
  const inHand = useClipInHand(clips, startOf(props));
  const { clip, player, goTo } = inHand;
  const loop = useSlowLoop(player, clip);
  const watch = useRef<HTMLDivElement>(null);

  function show(place: FilmPlace | null) {
    loop.stop();
    if (place !== null) goTo(place.clip.id, place.frame);
  }

  function turnTo(index: number) {
    const correction = corrections[index];
    if (correction === undefined) return;
    hush();
    onCurrent(index);
    show(placesOf(correction, reading).place);
  }

  function see(place: FilmPlace | null) {
    show(place);
    watch.current?.scrollIntoView({ block: "nearest" });
  }

  function hear(place: FilmPlace | null, isPlaying: boolean) {
    if (place === null) return;
    if (!isPlaying) return loop.stop();
    goTo(place.clip.id, place.frame);
    loop.start(place);
  }

  useClipKeys({
    player,
    toMark: (direction) => turnTo(current + direction),
  });

  const slides = corrections.map((correction, index) => {
    const places = placesOf(correction, reading);
    return {
      id: correction.id,
      name: correction.cue || correction.checkpointName,
      content: (
        <ReadingCorrection
          number={correction.roundId === round.id ? index + 1 : null}
          isVoiceKept={reading.voicesToHear.includes(correction.voiceId ?? "")}
          measures={measuresOf(correction, reading)}
          roundId={round.id}
          onSee={see}
          onPlaySlowly={(place) => {
            see(place);
            if (place.clip.id === clip.id) player.playThrough(slowSpan(place.clip, place.frame));
          }}
          onHear={(isPlaying) => hear(places.place, isPlaying)}
          onTogether={() => props.onTogether(correction)}
          {...{ correction, places, zone, today, mayTick }}
        />
      ),
    };
  });

  return (
    <>
      <ReadingWatch place={watch} inHand={inHand} clips={clips} reading={reading} />
      <NoCopyNote conversion={clip.conversion} />
      {reading.sent.length === 0 ? <Notice isStatic>{roundInWords(round, today, zone)}</Notice> : null}
      {round.retakeReason ? (
        <Notice kind="attention" isStatic title="The coach asks for another clip">
          {round.retakeReason}
        </Notice>
      ) : null}
      {slides.length > 0 ? (
        <Section {...headingOf(props)}>
          <ReadingSlides label="Corrections" slides={slides} current={current} onCurrent={turnTo} />
        </Section>
      ) : null}
      <ReadingKeeps reading={reading} onSee={see} onHear={hear} />
      <ReadingWords reading={reading} />
      <ReadingReply reading={reading} />
    </>
  );
}

/** Where the picture begins: on the correction in sight. */
function startOf({ corrections, current, reading }: ReadingRoundProps) {
  const correction = corrections[current];
  const place = correction ? placesOf(correction, reading).place : null;
  return place ? { clipId: place.clip.id, frame: place.frame } : undefined;
}

function headingOf({ corrections, reading }: ReadingRoundProps): { title: string; count?: string } {
  const own = corrections.filter((each) => each.roundId === reading.round.id).length;
  const before = corrections.length - own;
  if (own === 0) return { title: "Carried over from before" };
  const title = `Work on ${countInWords(own)}`;
  return before === 0 ? { title } : { title, count: `and ${before} from before` };
}
