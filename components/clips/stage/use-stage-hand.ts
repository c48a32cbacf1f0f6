"use client";
import { type RefObject, useEffect, useRef } from "react";
import { StageHand, type StageHandActs } from "./stage-hand";

/** Lets mouse, wheel and fingers enlarge and shift the picture on its stage. */
export function useStageHand(
  stage: RefObject<HTMLElement | null>,
  picture: RefObject<HTMLElement | null>,
  acts: StageHandActs,
): void {
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => {
    if (!stage.current || !picture.current) return;
    const hand = new StageHand(stage.current, picture.current, () => latest.current);
    return hand.listen();
  }, [stage, picture]);
}
