import { z } from "zod";
import type { DeviceStore } from "./kept-throws";

const deviceMemory = z.strictObject({
  personId: z.string(),
  athletes: z.array(z.strictObject({ athleteId: z.string(), givenName: z.string() })),
});

/**
 * Whom the page without signal can log for: who is signed in on this device, and ids and given names of the athletes of
 * their family. Nothing else about them is kept.
 */
export type DeviceMemory = z.infer<typeof deviceMemory>;

const PLACE = "slabside.family";

/** Remembers whom this device logs for; a device that keeps nothing remembers nobody. */
export function rememberFamily(store: DeviceStore, family: DeviceMemory): void {
  try {
    store.setItem(PLACE, JSON.stringify(family));
  } catch {
    /* Without room there is no logging without signal, and nothing else is lost. */
  }
}

/** Whom this device logs for, or null. */
export function rememberedFamily(store: DeviceStore): DeviceMemory | null {
  try {
    return deviceMemory.parse(JSON.parse(store.getItem(PLACE) ?? "null"));
  } catch {
    return null;
  }
}

/** Forgets whom this device logs for, as when they sign out. */
export function forgetFamily(store: Pick<Storage, "removeItem">): void {
  try {
    store.removeItem(PLACE);
  } catch {
    /* Nothing could be kept, so there is nothing to forget. */
  }
}
