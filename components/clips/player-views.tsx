"use client";
import { Button } from "react-aria-components/Button";
import { ToggleButton } from "react-aria-components/ToggleButton";
import { joinClasses } from "@/components/ui/join-classes";
import { LoopChoice } from "./loop-choice";
import type { PlayedWith } from "./played-with";
import styles from "./player-controls.module.css";
import { ControlSign } from "./stage/control-sign";
import { loopFromHere } from "./stage/loop-span";
import { MAX_ZOOM, mirrored, PAN_STEP, panBy, wholeAgain, ZOOM_STEP, zoomAt } from "./stage/stage-view";
import type { ClipPlayer } from "./use-clip-player";

/** How a picture is looked at: nearer, shifted, mirrored, over and over; and where its frames come from. */
export function PlayerViews({ player, marks, isOpen }: PlayedWith & { isOpen: boolean }) {
  const { view, look, loop, picture } = player;
  return (
    <div className={styles.views} data-open={isOpen || undefined}>
      <Zoom player={player} />
      <ToggleButton
        className={joinClasses(styles.key, styles.word)}
        isSelected={view.isMirrored}
        onChange={() => look(mirrored)}
      >
        Mirror
      </ToggleButton>
      <ToggleButton
        className={joinClasses(styles.key, styles.word)}
        isDisabled={picture !== "ready"}
        isSelected={loop !== null}
        onChange={() => loopFromHere(player, marks)}
      >
        Loop
      </ToggleButton>
      {loop && marks ? <LoopChoice {...{ player, marks, loop }} /> : null}
      {picture === "ready" ? (
        <span className={styles.source}>
          {player.source === "decoded" ? "Frames held ready" : "Frames sought one by one"}
        </span>
      ) : null}
    </div>
  );
}

function Zoom({ player: { view, look } }: { player: ClipPlayer }) {
  return (
    <fieldset className={styles.group} aria-label="Zoom">
      <ViewKey
        name="Farther"
        path="M4 8h8"
        isDisabled={view.zoom === 1}
        onPress={() => look((now) => zoomAt(now, 1 / ZOOM_STEP))}
      />
      <Button
        className={joinClasses(styles.key, styles.zoom)}
        isDisabled={view.zoom === 1}
        onPress={() => look(wholeAgain)}
        aria-label={`Whole picture, now ${view.zoom.toFixed(1)} times`}
      >
        {view.zoom.toFixed(1)} ×
      </Button>
      <ViewKey
        name="Nearer"
        path="M4 8h8M8 4v8"
        isDisabled={view.zoom === MAX_ZOOM}
        onPress={() => look((now) => zoomAt(now, ZOOM_STEP))}
      />
      {view.zoom > 1 ? <Pan look={look} /> : null}
    </fieldset>
  );
}

const WAYS = [
  { name: "Look further left", path: "M10 4L6 8l4 4", x: 1, y: 0 },
  { name: "Look further up", path: "M4 10l4-4 4 4", x: 0, y: 1 },
  { name: "Look further down", path: "M4 6l4 4 4-4", x: 0, y: -1 },
  { name: "Look further right", path: "M6 4l4 4-4 4", x: -1, y: 0 },
] as const;

function Pan({ look }: Pick<ClipPlayer, "look">) {
  return WAYS.map(({ name, path, x, y }) => (
    <ViewKey
      key={name}
      {...{ name, path }}
      onPress={() => look((now) => panBy(now, x * PAN_STEP, y * PAN_STEP))}
    />
  ));
}

interface ViewKeyProps {
  name: string;
  path: string;
  isDisabled?: boolean;
  onPress: () => void;
}

function ViewKey({ name, path, isDisabled = false, onPress }: ViewKeyProps) {
  return (
    <Button className={joinClasses(styles.key)} isDisabled={isDisabled} onPress={onPress} aria-label={name}>
      <ControlSign path={path} />
    </Button>
  );
}
