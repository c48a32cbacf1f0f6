/** A press as long as this is a hold; the first step of it is done at once. Common practice, no source. */
const HOLD_MS = 350;

/** How fast a hold goes on: frames a second at first and at most, and how long it takes to get there. */
const FIRST_RATE = 8;
const MOST_RATE = 60;
const RISING_S = 2.5;

/**
 * How many steps are done by a press that has been held so long: one at once, then more, faster the longer it is held.
 * @example stepsHeld(0) // 1
 */
export function stepsHeld(heldMs: number): number {
  const goingS = Math.max(0, heldMs - HOLD_MS) / 1000;
  const risingS = Math.min(goingS, RISING_S);
  const rising = FIRST_RATE * risingS + ((MOST_RATE - FIRST_RATE) / RISING_S / 2) * risingS ** 2;
  return 1 + Math.floor(rising + MOST_RATE * (goingS - risingS));
}

/**
 * Steps once now, and on for as long as it is not ended.
 * @param isGoing true for a press that is known to be a hold: its first step has been done, and it goes on at once
 * @returns what ends it
 */
export function startHold(step: (steps: number) => void, isGoing = false): () => void {
  const startMs = performance.now() - (isGoing ? HOLD_MS : 0);
  let done = 1;
  if (!isGoing) step(1);
  let redraw = requestAnimationFrame(goOn);
  function goOn(nowMs: number) {
    const due = stepsHeld(nowMs - startMs) - done;
    if (due > 0) step(due);
    done += Math.max(0, due);
    redraw = requestAnimationFrame(goOn);
  }
  return () => cancelAnimationFrame(redraw);
}
