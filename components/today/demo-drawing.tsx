"use client";
import { useRouter } from "next/navigation";
import { useEffect } from "react";
import { ProgressBar } from "@/components/ui/progress-bar";

/** How often the page looks again while clips are being drawn, in milliseconds. */
const LOOK_AGAIN_MS = 5000;

/** While the demo's clips are being drawn: how many can be watched already. */
export function DemoDrawing({ ready, drawing }: { ready: number; drawing: number }) {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), LOOK_AGAIN_MS);
    return () => clearInterval(timer);
  }, [router]);
  return (
    <ProgressBar
      label="The demo's clips are being drawn"
      value={ready}
      max={ready + drawing}
      words={`${ready} of ${ready + drawing} can be watched`}
    />
  );
}
