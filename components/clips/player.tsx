"use client";
import { Button } from "react-aria-components/Button";
import { Radio, RadioGroup } from "react-aria-components/RadioGroup";
import { joinClasses } from "@/components/ui/join-classes";
import { secondsInWords } from "./frame-table";
import styles from "./player.module.css";
import { PlayerState, type PlayerStateProps } from "./player-state";
import { Stage, type StageProps } from "./stage";
import type { ClipPlayer } from "./use-clip-player";
import { SPEEDS, type Speed } from "./use-playback";

const SPEED_WORDS: Record<Speed, string> = { 1: "1", 0.5: "1/2", 0.25: "1/4", 0.125: "1/8" };

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
}

/** A clip and its controls: play, speed, single frames, and the frame in hand. */
export function Player({ player, label, isLabelShown, state, isCompact, overlay, isHandTaken }: PlayerProps) {
  const { clip } = player;
  const hasFilm = clip.state === "ready" && clip.frameTimesMs.length > 0;
  return (
    <figure
      className={joinClasses(styles.player, isCompact && styles.compact)}
      aria-label={label}
      data-frame={player.frame}
    >
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
      {hasFilm ? <Controls player={player} /> : null}
    </figure>
  );
}

function Controls({ player }: { player: ClipPlayer }) {
  const { clip, wanted, isPlaying } = player;
  const isOff = player.picture !== "ready";
  const last = clip.frameTimesMs.length - 1;
  const time = secondsInWords(clip.frameTimesMs[wanted] ?? 0);
  return (
    <div className={styles.controls}>
      <input
        type="range"
        className={styles.scrub}
        min={0}
        max={last}
        value={wanted}
        disabled={isOff}
        aria-label="Frame"
        aria-valuetext={`frame ${wanted + 1} of ${last + 1}, ${time}`}
        onChange={(event) => player.show(Number(event.target.value))}
      />
      <div className={styles.steps}>
        <Button
          className={styles.key}
          isDisabled={isOff}
          onPress={() => player.step(-1)}
          aria-label="One frame back"
        >
          <Sign path="M10 4L6 8l4 4M5 4v8" />
        </Button>
        <Button
          className={joinClasses(styles.key, styles.play)}
          isDisabled={isOff}
          onPress={player.toggle}
          aria-label={isPlaying ? "Stop" : "Play"}
        >
          <Sign path={isPlaying ? "M5.5 4v8M10.5 4v8" : "M5.5 3.5L12 8l-6.5 4.5z"} />
        </Button>
        <Button
          className={styles.key}
          isDisabled={isOff}
          onPress={() => player.step(1)}
          aria-label="One frame on"
        >
          <Sign path="M6 4l4 4-4 4M11 4v8" />
        </Button>
      </div>
      <p className={styles.place}>
        <span>
          frame <b>{wanted + 1}</b> / {last + 1}
        </span>
        <span>{time}</span>
        {player.isExact ? null : <span className={styles.near}>nearest picture</span>}
      </p>
      <RadioGroup
        className={styles.speeds}
        aria-label="Speed"
        orientation="horizontal"
        value={String(player.speed)}
        onChange={(value) => player.setSpeed(Number(value) as Speed)}
      >
        {SPEEDS.map((speed) => (
          <Radio
            key={speed}
            value={String(speed)}
            className={styles.speed}
            aria-label={`${SPEED_WORDS[speed]} speed`}
          >
            {SPEED_WORDS[speed]}
          </Radio>
        ))}
      </RadioGroup>
    </div>
  );
}

function Sign({ path }: { path: string }) {
  return (
    <svg
      viewBox="0 0 16 16"
      width="16"
      height="16"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
      aria-hidden="true"
    >
      <path d={path} strokeLinejoin="round" strokeLinecap="round" />
    </svg>
  );
}
