"use client";
import { Player } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { useClipPair } from "@/components/clips/use-clip-pair";
import { type ClipPlayer, useClipPlayer } from "@/components/clips/use-clip-player";
import { MarksDrawn } from "@/components/marks/marks-drawn";
import { Button } from "@/components/ui/button";
import { Section } from "@/components/ui/section";
import type { CorrectionView, ReadingView } from "@/server/api/reviews/shapes";
import { clipFacts } from "./clip-words";
import styles from "./reading.module.css";
import type { FilmPlace } from "./reading-places";
import { marksOf } from "./reading-watch";

/** What a {@link ReadingTogether} takes. */
export interface ReadingTogetherProps {
  correction: CorrectionView;
  pair: { older: FilmPlace; newer: FilmPlace };
  reading: Pick<ReadingView, "drawing" | "marks">;
  onBack: () => void;
}

/** The clip a correction was given on and the one that came in reply, locked on the same moment. */
export function ReadingTogether({ correction, pair, reading, onBack }: ReadingTogetherProps) {
  const { older, newer } = pair;
  const oldPlayer = useClipPlayer(older.clip, older.frame);
  const newPlayer = useClipPlayer(newer.clip, newer.frame);
  const both = useClipPair(oldPlayer, newPlayer, { older: older.frame, newer: newer.frame });
  useClipKeys({ player: both.newer });
  return (
    <Section
      title={correction.cue || correction.checkpointName}
      aside={
        <Button autoFocus onPress={onBack}>
          Back to the review
        </Button>
      }
    >
      <p className={styles.about}>
        Both stand at the same moment of the delivery. Where one goes, the other goes.
      </p>
      <div className={styles.both} data-print="no">
        <Side word="Before" place={older} player={both.older} reading={reading} />
        <Side word="New clip" place={newer} player={both.newer} reading={reading} />
      </div>
      <Button
        onPress={() => both.showPair(older.frame, newer.frame)}
        isDisabled={oldPlayer.picture !== "ready" || newPlayer.picture !== "ready"}
      >
        Both back to the moment
      </Button>
    </Section>
  );
}

interface SideProps {
  word: string;
  place: FilmPlace;
  player: ClipPlayer;
  reading: ReadingTogetherProps["reading"];
}

function Side({ word, place, player, reading }: SideProps) {
  const [filmed] = clipFacts(place.clip);
  return (
    <Player
      player={player}
      label={filmed === undefined ? word : `${word}, ${filmed}`}
      isLabelShown
      isCompact
      state={filmFacts(place.clip, reading.drawing)}
      overlay={(stage) => (
        <MarksDrawn marks={marksOf(place.clip, reading.marks)} frame={player.frame} stage={stage} />
      )}
    />
  );
}
