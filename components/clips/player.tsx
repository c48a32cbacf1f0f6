"use client";
import type { ReactNode } from "react";
import { joinClasses } from "@/components/ui/join-classes";
import type { MarkedFrames } from "./event-strip";
import styles from "./player.module.css";
import { PlayerControls } from "./player-controls";
import { PlayerState, type PlayerStateProps } from "./player-state";
import { Stage, type StageProps } from "./stage";
import { useTold } from "./stage/told-place";
import type { ClipPlayer } from "./use-clip-player";

/** What a {@link Player} takes. */
export interface PlayerProps {
  player: ClipPlayer;
  /** What the clip is, e.g. "New clip, open side"; read out, and shown above when `isLabelShown`. */
  label: string;
  isLabelShown?: boolean;
  state: PlayerStateProps["facts"];
  /** Smaller picture, for two beside each other or for a phone's head. */
  isCompact?: boolean;
  /** What is drawn over the picture, and whether it takes the presses: see {@link Stage}. */
  overlay?: StageProps["overlay"];
  isHandTaken?: boolean;
  /** The marked moments, between which the clip can be played over and over. */
  marks?: MarkedFrames;
}

/** A clip and its controls: play, speed, single frames, and the frame in hand. */
export function Player(props: PlayerProps) {
  const { player, label, isLabelShown, state, isCompact, overlay, isHandTaken, marks } = props;
  const { clip } = player;
  const hasFilm = clip.state === "ready" && clip.frameTimesMs.length > 0;
  return (
    <TellingFigure told={player.told} label={label} isCompact={isCompact}>
      {isLabelShown ? <figcaption className={styles.label}>{label}</figcaption> : null}
      <div className={styles.screen}>
        {hasFilm ? (
          <Stage {...{ player, overlay, isHandTaken }}>
            <PlayerState player={player} facts={state} hasFilm />
          </Stage>
        ) : (
          <PlayerState player={player} facts={state} hasFilm={false} />
        )}
      </div>
      {hasFilm ? <PlayerControls player={player} marks={marks} /> : null}
    </TellingFigure>
  );
}

interface TellingFigureProps {
  told: ClipPlayer["told"];
  label: string;
  isCompact: boolean | undefined;
  children: ReactNode;
}

/** Says which frame is on the picture as soon as it is. */
function TellingFigure({ told, label, isCompact, children }: TellingFigureProps) {
  return (
    <figure
      className={joinClasses(styles.player, isCompact && styles.compact)}
      aria-label={label}
      data-frame={useTold(told, (place) => place.frame)}
    >
      {children}
    </figure>
  );
}
