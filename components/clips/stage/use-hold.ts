"use client";
import { useEffect, useRef } from "react";
import { startHold } from "./hold";

/** A held key repeats far oftener than this; one that no longer does was let go where nobody heard it. */
const SILENT_MS = 600;

/** A press that goes on stepping while it is held. */
export interface Hold {
  /** A button is pressed: steps once, then goes on until the end. */
  begin: (by: number) => void;
  /** A key that has stepped once repeats: goes on until the end, or until it repeats no more. */
  goOn: (by: number) => void;
  end: () => void;
}

/** One hold at a time; it ends as well when the page is left. */
export function useHold(step: (frames: number) => void): Hold {
  const latest = useRef(step);
  latest.current = step;
  const hold = useRef<Hold | null>(null);
  hold.current ??= makeHold((frames) => latest.current(frames));
  useEffect(() => {
    const end = () => hold.current?.end();
    window.addEventListener("blur", end);
    return () => {
      window.removeEventListener("blur", end);
      end();
    };
  }, []);
  return hold.current;
}

function makeHold(step: (frames: number) => void): Hold {
  let stop: (() => void) | null = null;
  let heldBy = 0;
  let silence: ReturnType<typeof setTimeout> | undefined;
  const end = () => {
    clearTimeout(silence);
    stop?.();
    stop = null;
  };
  const start = (by: number, isGoing: boolean) => {
    end();
    heldBy = by;
    stop = startHold((steps) => step(steps * by), isGoing);
  };
  return {
    begin: (by) => start(by, false),
    goOn: (by) => {
      if (stop === null || heldBy !== by) start(by, true);
      clearTimeout(silence);
      silence = setTimeout(end, SILENT_MS);
    },
    end,
  };
}
