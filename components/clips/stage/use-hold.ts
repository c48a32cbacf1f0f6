"use client";
import { useEffect, useRef } from "react";
import { startHold } from "./hold";

/** One press at a time that goes on stepping while it is held; it ends as well when the page is left. */
export function useHold(step: (steps: number) => void): { begin: (by: number) => void; end: () => void } {
  const latest = useRef(step);
  latest.current = step;
  const held = useRef<(() => void) | null>(null);
  const acts = useRef({
    begin: (by: number) => {
      acts.current.end();
      held.current = startHold((steps) => latest.current(steps * by));
    },
    end: () => {
      held.current?.();
      held.current = null;
    },
  });
  useEffect(() => {
    const { end } = acts.current;
    window.addEventListener("blur", end);
    return () => {
      window.removeEventListener("blur", end);
      end();
    };
  }, []);
  return acts.current;
}
