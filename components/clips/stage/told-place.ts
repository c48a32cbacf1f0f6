import { startTransition, useSyncExternalStore } from "react";
import { FIRST_PLACE, type Place } from "./stepping";

/** Tells where the picture stands: first those who must follow it at once, then all else on the page. */
export class ToldPlace {
  private place: Place = FIRST_PLACE;
  private readonly listeners = new Set<() => void>();

  constructor(private readonly tellPage: (place: Place) => void) {}

  readonly get = (): Place => this.place;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** What is asked for counts at once everywhere; that the film has come to it may wait until the film is drawn. */
  readonly tell = (place: Place): void => {
    const isAnswer = place.wanted === this.place.wanted && place.shownBy === "film";
    this.place = place;
    for (const listener of this.listeners) listener();
    if (isAnswer) startTransition(() => this.tellPage(place));
    else this.tellPage(place);
  };
}

/** The place as it is told, followed at once. */
export function useToldPlace({ subscribe, get }: ToldPlace): Place {
  return useSyncExternalStore(subscribe, get, get);
}
