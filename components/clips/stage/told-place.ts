import { startTransition, useSyncExternalStore } from "react";
import { flushSync } from "react-dom";
import { FIRST_PLACE, type Place } from "./place";

/** A picture that takes longer than this to come is no longer waited for by the page; common practice, no source. */
const LATE_MS = 100;

/** By these a hand acts on what it sees. */
const ACTS = ["keydown", "pointerdown", "click"] as const;

/**
 * Tells where the picture stands: first those who must follow it at once, then all else on the page. To draw the page
 * anew takes as long as to seek a frame, and one would hold up the other: while the picture is on its way the page waits
 * for it, unless a hand acts meanwhile, which must find what it asked for.
 */
export class ToldPlace {
  private place: Place = FIRST_PLACE;
  private onPage: Place | null = null;
  private readonly listeners = new Set<() => void>();
  private late: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly tellPage: (place: Place) => void) {}

  readonly get = (): Place => this.place;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Tells a place: to those who follow it now, to the page now or when the picture is there. */
  readonly tell = (place: Place): void => {
    const isAnswer = place.wanted === this.place.wanted && place.shownBy === "film";
    const isUnderWay = place.isExact && place.wanted !== place.frame;
    this.place = place;
    clearTimeout(this.late);
    for (const listener of this.listeners) listener();
    if (isUnderWay) this.late = setTimeout(() => this.tellPage(this.place), LATE_MS);
    else if (isAnswer) startTransition(() => this.tellPage(place));
    else this.tellPage(place);
  };

  /** The page has been drawn with a place. */
  drawn(place: Place): void {
    this.onPage = place;
  }

  /** Draws the page with the place as it stands before a hand's act is heeded. */
  readonly catchUp = (): void => {
    if (this.onPage === this.place) return;
    clearTimeout(this.late);
    flushSync(() => this.tellPage(this.place));
  };

  /** Heeds hands from now on. @returns what ends it */
  heedHands(): () => void {
    for (const act of ACTS) window.addEventListener(act, this.catchUp, { capture: true });
    return () => {
      clearTimeout(this.late);
      for (const act of ACTS) window.removeEventListener(act, this.catchUp, { capture: true });
    };
  }
}

/** What is read off the place as it is told, followed at once; only its change draws anew. */
export function useTold<Read extends string | number>(
  { subscribe, get }: ToldPlace,
  read: (place: Place) => Read,
): Read {
  const now = () => read(get());
  return useSyncExternalStore(subscribe, now, now);
}
