"use client";
import { useMemo, useState } from "react";
import { Button } from "react-aria-components/Button";
import { Radio, RadioGroup } from "react-aria-components/RadioGroup";
import { ToggleButton } from "react-aria-components/ToggleButton";
import { joinClasses } from "@/components/ui/join-classes";
import { playedTimeInWords, trueTimesMs } from "./played-time";
import type { PlayedWith } from "./played-with";
import styles from "./player-controls.module.css";
import { PlayerViews } from "./player-views";
import { ControlSign } from "./stage/control-sign";
import { useTold } from "./stage/told-place";
import { useHold } from "./stage/use-hold";
import type { ClipPlayer } from "./use-clip-player";
import { SPEEDS, type Speed } from "./use-playback";

const SPEED_WORDS: Record<Speed, string> = { 1: "1", 0.5: "1/2", 0.25: "1/4", 0.125: "1/8" };

/** What moves a clip: the scale of frames, steps, play, speed, and how the picture is looked at. */
export function PlayerControls({ player, marks }: PlayedWith) {
  const [areViewsOpen, setViewsOpen] = useState(false);
  const isOff = player.picture !== "ready";
  const last = player.clip.frameTimesMs.length - 1;
  return (
    <div className={styles.controls}>
      <Scale player={player} last={last} isOff={isOff} />
      <Steps player={player} isOff={isOff} />
      <PlaceInClip player={player} last={last} />
      <Speeds player={player} />
      <ToggleButton
        className={joinClasses(styles.key, styles.more)}
        isSelected={areViewsOpen}
        onChange={setViewsOpen}
        aria-label="More ways to look"
      >
        <ControlSign path="M3.5 8h.01M8 8h.01M12.5 8h.01" />
      </ToggleButton>
      <PlayerViews player={player} marks={marks} isOpen={areViewsOpen} />
    </div>
  );
}

const frameWanted = (place: { wanted: number }) => place.wanted;

/** The true time of a frame in words; empty while it is not known. */
function useTimeInWords({ clip }: ClipPlayer, frame: number): string {
  const timesMs = useMemo(() => trueTimesMs(clip), [clip]);
  return playedTimeInWords(timesMs, frame);
}

/* What follows the picture at once is drawn by itself: the rest of the controls would take as long as a seek. */
function Scale({ player, last, isOff }: { player: ClipPlayer; last: number; isOff: boolean }) {
  const wanted = useTold(player.told, frameWanted);
  const time = useTimeInWords(player, wanted);
  return (
    <input
      type="range"
      className={styles.scrub}
      min={0}
      max={last}
      value={wanted}
      disabled={isOff}
      aria-label="Frame"
      aria-valuetext={`frame ${wanted + 1} of ${last + 1}${time && `, ${time}`}`}
      onChange={(event) => player.show(Number(event.target.value))}
    />
  );
}

function PlaceInClip({ player, last }: { player: ClipPlayer; last: number }) {
  const wanted = useTold(player.told, frameWanted);
  const time = useTimeInWords(player, wanted);
  return (
    <p className={styles.place}>
      <span>
        frame <b>{wanted + 1}</b> / {last + 1}
      </span>
      {time ? <span>{time}</span> : null}
      {player.isExact ? null : <span className={styles.near}>nearest picture</span>}
    </p>
  );
}

function Steps({ player, isOff }: { player: ClipPlayer; isOff: boolean }) {
  const { isPlaying } = player;
  const hold = useHold(player.step);
  const stepping = (by: -1 | 1) => ({
    className: joinClasses(styles.key),
    isDisabled: isOff,
    onPressStart: () => hold.begin(by),
    onPressEnd: hold.end,
  });
  return (
    <div className={styles.steps}>
      <Button {...stepping(-1)} aria-label="One frame back">
        <ControlSign path="M10 4L6 8l4 4M5 4v8" />
      </Button>
      <Button
        className={joinClasses(styles.key, styles.play)}
        isDisabled={isOff}
        onPress={player.toggle}
        aria-label={isPlaying ? "Stop" : "Play"}
      >
        <ControlSign path={isPlaying ? "M5.5 4v8M10.5 4v8" : "M5.5 3.5L12 8l-6.5 4.5z"} />
      </Button>
      <Button {...stepping(1)} aria-label="One frame on">
        <ControlSign path="M6 4l4 4-4 4M11 4v8" />
      </Button>
    </div>
  );
}

function Speeds({ player }: { player: ClipPlayer }) {
  return (
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
  );
}
