"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import { Icon } from "@/components/ui/icons";
import styles from "./measures.module.css";
import { isAllPlaced } from "./placing";
import { placingSentence } from "./placing-words";
import type { PointsInHand } from "./use-points-in-hand";

/** What a {@link PlacingBar} takes. */
export interface PlacingBarProps {
  hand: PointsInHand;
  /** What is being placed, e.g. "Front-knee flexion". */
  title: string;
  /** What has come of it, e.g. its value in words, or why there is none. */
  outcome?: ReactNode;
  /** Further things to set, such as the words of a note. */
  children?: ReactNode;
}

/** What is asked for next and the same acts as the keys have, for a thumb: at the foot of a phone's screen. */
export function PlacingBar({ hand, title, outcome, children }: PlacingBarProps) {
  const { placing, player } = hand;
  const isDone = isAllPlaced(placing);
  return (
    <section className={styles.bar} aria-label={title}>
      <p className={styles.asked}>
        <b>{title}</b>{" "}
        <span role="status">
          {outcome ? <strong className={styles.outcome}>{outcome}</strong> : null}{" "}
          {placingSentence(placing, player.inHand)}
        </span>
      </p>
      {children}
      <div className={styles.acts}>
        <NudgePad hand={hand} />
        <Button onPress={hand.back} isDisabled={placing.placed.length === 0}>
          A point back
        </Button>
        {isDone ? null : (
          <Button onPress={hand.take}>{placing.cross ? "Take the point" : "Place by arrows"}</Button>
        )}
        {hand.leave ? <Button onPress={hand.leave}>{isDone ? "Done" : "Leave it"}</Button> : null}
      </div>
    </section>
  );
}

/** Four keys that move the point by a source pixel each, as the arrow keys do. */
function NudgePad({ hand }: { hand: PointsInHand }) {
  const isOff = hand.placing.cross === null && hand.placing.selected === null;
  const across = hand.player.view.isMirrored ? -1 : 1;
  const keys = [
    ["Left", "back", -across, 0],
    ["Up", "up", 0, -1],
    ["Down", "down", 0, 1],
    ["Right", "forward", across, 0],
  ] as const;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would need a legend that nobody sees
    <div className={styles.pad} role="group" aria-label="Move the point by a pixel">
      {keys.map(([word, icon, x, y]) => (
        <Button key={word} aria-label={word} isDisabled={isOff} onPress={() => hand.nudge(x, y)}>
          <Icon name={icon} />
        </Button>
      ))}
    </div>
  );
}
