"use client";
import { useEffect } from "react";
import { type DeviceMemory, rememberFamily } from "./device-memory";
import { deviceStore } from "./device-store";

/** Remembers on this device for whom it logs when there is no signal; shows nothing. */
export function RememberFamily({ personId, athletes }: DeviceMemory) {
  const family = JSON.stringify({ personId, athletes });
  useEffect(() => {
    rememberFamily(deviceStore, JSON.parse(family) as DeviceMemory);
  }, [family]);
  return null;
}
