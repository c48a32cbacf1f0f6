"use client";
import { useEffect, useRef } from "react";
import { isKeyTaken } from "@/components/clips/is-key-taken";
import { Button } from "@/components/ui/button";
import { GUIDE_WORDS, MARK_GUIDES } from "@/server/domain/mechanics/mark-guide";
import { canBeMeasuredFrom, MEASURE_KINDS, MEASURES } from "@/server/domain/mechanics/measure-kind";
import styles from "./room-picture.module.css";
import type { PictureTools } from "./use-picture-tools";

interface Choice {
  key: string;
  words: string;
  /** Whether the clip's view does not allow it; choosing it says why. */
  isRefused: boolean;
  choose: () => void;
}

/** Which measure to take or what to show, each by its number. */
export function PictureChooser({ tools, of }: { tools: PictureTools; of: "measures" | "marks" }) {
  const choices = of === "measures" ? measureChoices(tools) : markChoices(tools);
  useDigits(choices, tools.putDown);
  return (
    <section className={styles.bar} aria-label={of === "measures" ? "Measure what?" : "Show what?"}>
      <p className={styles.asked}>
        <b>{of === "measures" ? "Measure what?" : "Show what?"}</b> Choose one, or press its number.
      </p>
      <ul className={styles.choices}>
        {choices.map(({ key, words, isRefused, choose }, index) => (
          <li key={key}>
            <Button isSmall className={isRefused ? styles.refused : ""} onPress={choose}>
              <kbd className={styles.digit}>{index + 1}</kbd> {words}
              {isRefused ? <span className={styles.why}>not from here</span> : null}
            </Button>
          </li>
        ))}
      </ul>
      {of === "measures" ? <NotMeasured /> : null}
      <div className={styles.acts}>
        <Button onPress={tools.putDown}>Leave it</Button>
      </div>
    </section>
  );
}

/** What is not offered, and why. */
function NotMeasured() {
  return (
    <details className={styles.help}>
      <summary>Why is no angle of the arm among them?</summary>
      <p>
        At 60 frames a second the throwing shoulder turns about 117 degrees from one picture of a phone to the
        next (7,000 degrees a second, computed), so the frame that would have to be measured is not there. And
        one camera sees only how an arm looks from where it stands, never how far it is turned about itself. A
        number would look sure and be a guess.
      </p>
    </details>
  );
}

function measureChoices({ clip, measure }: PictureTools): Choice[] {
  return MEASURE_KINDS.map((kind) => ({
    key: kind,
    words: MEASURES[kind].words,
    isRefused: !canBeMeasuredFrom(kind, clip.view),
    choose: () => measure(kind),
  }));
}

function markChoices({ mark }: PictureTools): Choice[] {
  return MARK_GUIDES.map((guide) => ({
    key: guide,
    words: GUIDE_WORDS[guide],
    isRefused: false,
    choose: () => mark(guide),
  }));
}

/** While something is chosen its numbers come before those of the moments. */
function useDigits(choices: readonly Choice[], leave: () => void): void {
  const latest = useRef({ choices, leave });
  latest.current = { choices, leave };
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (isKeyTaken(event)) return;
      const now = latest.current;
      const act = event.key === "Escape" ? now.leave : now.choices[Number(event.key) - 1]?.choose;
      if (!act) return;
      event.preventDefault();
      event.stopPropagation();
      act();
    };
    window.addEventListener("keydown", listen, { capture: true });
    return () => window.removeEventListener("keydown", listen, { capture: true });
  }, []);
}
