import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { isKeyTaken } from "@/components/clips/is-key-taken";
import { isLetterKey, letterKeysAreOn, switchLetterKeys } from "@/components/ui/letter-keys";

const key = (name: string, held: Partial<KeyboardEvent> = {}) =>
  ({
    ...{ key: name, ctrlKey: false, metaKey: false, altKey: false, defaultPrevented: false, target: null },
    ...held,
  }) as KeyboardEvent;

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal("localStorage", {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => kept.set(name, value),
  });
  vi.stubGlobal("Element", class {});
});
afterEach(() => vi.unstubAllGlobals());

describe("letters that act at once", () => {
  it("do so until they are switched off, and again once they are on", () => {
    expect(letterKeysAreOn()).toBe(true);
    expect(isKeyTaken(key("c"))).toBe(false);
    switchLetterKeys(false);
    for (const each of ["c", "1", "/", "+"]) expect(isKeyTaken(key(each)), each).toBe(true);
    switchLetterKeys(true);
    expect(isKeyTaken(key("c"))).toBe(false);
  });

  it("leave the keys that are no letters alone", () => {
    switchLetterKeys(false);
    for (const each of ["ArrowLeft", " ", "Enter", "Escape"]) expect(isKeyTaken(key(each)), each).toBe(false);
    expect(isLetterKey(key("1", { altKey: true }))).toBe(false);
  });

  it("stay on where a browser keeps nothing", () => {
    vi.stubGlobal("localStorage", {
      getItem: () => {
        throw new Error("Nothing is kept here.");
      },
    });
    expect(letterKeysAreOn()).toBe(true);
  });
});
