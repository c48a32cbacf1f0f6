"use client";
import { useEffect, useRef } from "react";
import { isKeyTaken } from "@/components/clips/is-key-taken";
import { PLACING_KEYS } from "@/components/measures/use-placing-keys";
import { Button } from "@/components/ui/button";
import styles from "./room-picture.module.css";
import type { PictureTools } from "./use-picture-tools";

/** The keys in words. */
const PICTURE_KEYS = [
  ["N", "measure: then its number"],
  ["S", "show on the picture: then its number"],
  ["Z", "undo, with Shift redo"],
  ...PLACING_KEYS,
] as const;

/** The ways to measure and to show something on the clip in hand, and to undo it. */
export function PictureActs({ tools }: { tools: PictureTools }) {
  const { choose, undo } = tools;
  usePictureKeys(tools);
  return (
    <div className={styles.tools}>
      <div className={styles.acts}>
        <Button isSmall onPress={() => choose("measures")}>
          Measure <kbd className={styles.digit}>N</kbd>
        </Button>
        <Button isSmall onPress={() => choose("marks")}>
          Show <kbd className={styles.digit}>S</kbd>
        </Button>
        <Button isSmall onPress={undo.back} isDisabled={!undo.canBack}>
          Undo <kbd className={styles.digit}>Z</kbd>
        </Button>
        <Button isSmall onPress={undo.on} isDisabled={!undo.canOn}>
          Redo
        </Button>
      </div>
      <details className={styles.keys}>
        <summary>Keys for measuring</summary>
        <dl>
          {PICTURE_KEYS.map(([key, act]) => (
            <div key={key}>
              <dt>
                <kbd>{key}</kbd>
              </dt>
              <dd>{act}</dd>
            </div>
          ))}
        </dl>
      </details>
    </div>
  );
}

function usePictureKeys(tools: PictureTools): void {
  const latest = useRef(tools);
  latest.current = tools;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (isKeyTaken(event)) return;
      const { choose, undo } = latest.current;
      const acts: Record<string, () => void> = {
        n: () => choose("measures"),
        s: () => choose("marks"),
        z: event.shiftKey ? undo.on : undo.back,
      };
      const act = acts[event.key.toLowerCase()];
      if (!act) return;
      event.preventDefault();
      act();
    };
    window.addEventListener("keydown", listen);
    return () => window.removeEventListener("keydown", listen);
  }, []);
}
