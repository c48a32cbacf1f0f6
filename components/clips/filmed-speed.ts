import { FILMED_SPEEDS, type FilmedSpeed } from "@/server/domain/clips/capture-rate";

/** Where a device keeps text, such as the browser's own store. */
export type SpeedStore = Pick<Storage, "getItem" | "setItem">;

const PLACE = "slabside.filmed-speed";

/** What was said on this device the last time, or null when nothing was. A store that refuses is taken for an empty one. */
export function keptSpeed(store: () => SpeedStore): FilmedSpeed | null {
  try {
    const kept = store().getItem(PLACE);
    return FILMED_SPEEDS.find((speed) => speed === kept) ?? null;
  } catch {
    return null;
  }
}

/** Keeps on this device how its camera films; where the browser keeps nothing it is asked again the next time. */
export function keepSpeed(store: () => SpeedStore, speed: FilmedSpeed): void {
  try {
    store().setItem(PLACE, speed);
  } catch {
    /* A browser that keeps nothing asks again. */
  }
}
