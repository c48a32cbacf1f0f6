"use client";
import { useEffect } from "react";

/** Keeps the page that logs without signal on this device, anew with every visit; shows nothing. */
export function KeepPage() {
  useEffect(() => void keepPage(), []);
  return null;
}

async function keepPage(): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  try {
    const { active } = await navigator.serviceWorker.register("/service-worker.js");
    active?.postMessage("keep-page");
  } catch {
    /* Without it there is no page without signal; every other page is as it was. */
  }
}
