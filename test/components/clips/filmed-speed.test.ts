import { describe, expect, it } from "vitest";
import { keepSpeed, keptSpeed, type SpeedStore } from "@/components/clips/filmed-speed";

function device(): SpeedStore {
  const kept = new Map<string, string>();
  return {
    getItem: (place) => kept.get(place) ?? null,
    setItem: (place, text) => void kept.set(place, text),
  };
}

const refusing = (): SpeedStore => {
  throw new Error("The browser keeps nothing.");
};

describe("how a device films", () => {
  it("is asked once and remembered by the device", () => {
    const store = device();
    expect(keptSpeed(() => store)).toBeNull();
    keepSpeed(() => store, "slow_240");
    expect(keptSpeed(() => store)).toBe("slow_240");
  });

  it("is asked again where the browser keeps nothing, or something else", () => {
    const store = device();
    store.setItem("slabside.filmed-speed", "warp");
    expect(keptSpeed(() => store)).toBeNull();
    expect(keptSpeed(refusing)).toBeNull();
    expect(() => keepSpeed(refusing, "normal")).not.toThrow();
  });
});
