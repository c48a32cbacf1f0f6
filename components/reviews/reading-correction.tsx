"use client";
import { Button as OpenButton } from "react-aria-components/Button";
import { filmRatio } from "@/components/clips/film-ratio";
import { FrameImage } from "@/components/clips/frame-image";
import { useThumbnails } from "@/components/clips/use-thumbnails";
import { CorrectionMark } from "@/components/home/correction-mark";
import { Button } from "@/components/ui/button";
import { voiceAddress } from "@/components/voice/voice-address";
import { VoiceGone, VoicePlayer } from "@/components/voice/voice-player";
import type { CorrectionView } from "@/server/api/reviews/shapes";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { happeningInWords } from "./correction-words";
import styles from "./reading.module.css";
import { type measuresOf, ReadingMeasures } from "./reading-measures";
import type { CorrectionPlaces, FilmPlace } from "./reading-places";
import { ReadingPractice } from "./reading-practice";

/** What a {@link ReadingCorrection} takes. */
export interface ReadingCorrectionProps {
  /** By the recap; null for one that is carried over from before. */
  number: number | null;
  correction: CorrectionView;
  places: CorrectionPlaces;
  /** False once its spoken note was deleted with the film. */
  isVoiceKept: boolean;
  measures: ReturnType<typeof measuresOf>;
  /** The round that is read. */
  roundId: string;
  zone: string;
  today: string;
  mayTick: boolean;
  onSee: (place: FilmPlace) => void;
  onPlaySlowly: (place: FilmPlace) => void;
  onHear: (isPlaying: boolean) => void;
  onTogether: () => void;
}

/** One correction as the family reads it: the cue, what was spoken, old and new, the drill, what was said since, practice. */
export function ReadingCorrection(props: ReadingCorrectionProps) {
  const { number, correction, places, zone, today, mayTick, onSee } = props;
  const name = correction.cue || correction.checkpointName;
  const since = correction.happenings.slice(1);
  return (
    <article>
      <p className={styles.cue}>
        {number === null ? null : <b>{number}</b>}
        {name}
      </p>
      <p className={styles.about}>
        {number === null ? "From before: " : ""}
        {correction.checkpointName}, {PHASE_WORDS[correction.phase].toLowerCase()}
      </p>
      <p className={styles.about}>
        <CorrectionMark state={correction.state} cameBack={correction.cameBack} />
      </p>
      <Voice {...props} name={name} />
      <Acts {...props} name={name} />
      <ReadingMeasures measures={props.measures} roundId={props.roundId} />
      {places.pair === null ? null : (
        <div className={styles.pair}>
          <Still word="Before" place={places.pair.older} onSee={onSee} />
          <Still word="New clip" place={places.pair.newer} onSee={onSee} />
        </div>
      )}
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
      <ReadingPractice
        correctionId={correction.id}
        name={name}
        days={correction.tickableDays}
        practisedOn={correction.practisedOn}
        today={today}
        mayTick={mayTick}
      />
    </article>
  );
}

type Named = ReadingCorrectionProps & { name: string };

function Voice({ correction: { voiceId }, isVoiceKept, name, onHear }: Named) {
  if (voiceId === null) return null;
  return (
    <div className={styles.voice}>
      {isVoiceKept ? (
        <VoicePlayer address={voiceAddress(voiceId)} label={name} onPlaying={onHear} />
      ) : (
        <VoiceGone />
      )}
    </div>
  );
}

function Acts({ places: { place, pair }, name, onSee, onPlaySlowly, onTogether }: Named) {
  if (place === null) return <p className={styles.about}>There is no film of it any more.</p>;
  return (
    <div className={styles.acts}>
      <Button onPress={() => onSee(place)} aria-label={`See it on frame ${place.frame + 1}: ${name}`}>
        See it
      </Button>
      <Button onPress={() => onPlaySlowly(place)} aria-label={`Play it slowly: ${name}`}>
        Play it slowly
      </Button>
      {pair === null ? null : (
        <Button onPress={onTogether} aria-label={`Old and new together: ${name}`}>
          Old and new together
        </Button>
      )}
    </div>
  );
}

interface StillProps {
  word: string;
  place: FilmPlace;
  onSee: (place: FilmPlace) => void;
}

function Still({ word, place, onSee }: StillProps) {
  const { clip, frame } = place;
  const address = useThumbnails(clip, [frame])(frame);
  return (
    <OpenButton
      className={styles.open}
      onPress={() => onSee(place)}
      aria-label={`${word}: show frame ${frame + 1}`}
    >
      <span className={styles.still} style={{ aspectRatio: filmRatio(clip) }}>
        {address ? <FrameImage address={address} className={styles.image} /> : null}
      </span>
      {word}, frame {frame + 1}
    </OpenButton>
  );
}
