"use client";
import { useEffect, useRef } from "react";
import { isKeyTaken } from "@/components/clips/is-key-taken";
import { chosenBy, type JudgedAs } from "./judged-as";

/** What the keys do while a frame is judged. */
export interface JudgeKeyActs {
  choose: (chosen: JudgedAs) => void;
  keep: () => void;
}

/** Lets the keyboard judge a frame; its digits come before the clip's. */
export function useJudgeKeys(acts: JudgeKeyActs | null): void {
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      /* A choice that has the focus does not use these keys itself. */
      const isTaken = isKeyTaken(event, { isChoiceFree: true });
      const act = latest.current && !isTaken ? actOf(event, latest.current) : undefined;
      if (!act) return;
      event.preventDefault();
      event.stopPropagation();
      if (!event.repeat) act();
    };
    window.addEventListener("keydown", listen, { capture: true });
    return () => window.removeEventListener("keydown", listen, { capture: true });
  }, []);
}

function actOf(event: KeyboardEvent, { choose, keep }: JudgeKeyActs): (() => void) | undefined {
  const chosen = chosenBy(event.key);
  if (chosen !== null) return () => choose(chosen);
  const control = event.target instanceof Element ? event.target.closest("button, a, summary") : null;
  const isOfChoice = control?.closest("[role=radiogroup]") !== null && control !== null;
  return event.key === "Enter" && (control === null || isOfChoice) ? keep : undefined;
}
