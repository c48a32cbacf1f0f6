"use client";
import { useSyncExternalStore } from "react";

/** Where a device remembers it; what is not there is on. */
const PLACE = "slabside-letter-keys";

const heard = new Set<() => void>();

/** Whether a single letter, digit or sign does something by itself on this device (WCAG 2.2, 2.1.4). */
export function letterKeysAreOn(): boolean {
  try {
    return localStorage.getItem(PLACE) !== "off";
  } catch {
    return true; // a browser that keeps nothing
  }
}

/** Switches them for this device; every page that is open follows. */
export function switchLetterKeys(isOn: boolean): void {
  try {
    localStorage.setItem(PLACE, isOn ? "on" : "off");
  } catch {
    return;
  }
  for (const tell of heard) tell();
}

/** Whether a key is one of those that can be switched off: a sign by itself, without a key held down beside it. */
export function isLetterKey(event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey">): boolean {
  return event.key.length === 1 && event.key !== " " && !event.ctrlKey && !event.metaKey && !event.altKey;
}

/** The switch as a component shows it. */
export function useLetterKeys(): boolean {
  return useSyncExternalStore(listen, letterKeysAreOn, () => true);
}

function listen(tell: () => void): () => void {
  heard.add(tell);
  window.addEventListener("storage", tell);
  return () => {
    heard.delete(tell);
    window.removeEventListener("storage", tell);
  };
}
