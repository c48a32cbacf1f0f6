"use client";
import { useEffect } from "react";
import { type DeviceMemory, rememberFamily } from "./device-memory";

/** Remembers on this device for whom it logs when there is no signal; shows nothing. */
export function RememberFamily({ personId, athletes }: DeviceMemory) {
  const family = JSON.stringify({ personId, athletes });
  useEffect(() => {
    rememberFamily(window.localStorage, JSON.parse(family) as DeviceMemory);
  }, [family]);
  return null;
}
