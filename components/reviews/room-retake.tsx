"use client";
import { useState } from "react";
import { RoundDialogs } from "@/components/queue/round-dialogs";
import { Button } from "@/components/ui/button";

/** The way out when a clip cannot be used: the reason goes to the family and the promise's clock stands still. */
export function RoomRetake({ roundId, athleteName }: { roundId: string; athleteName: string }) {
  const [isAsking, setAsking] = useState(false);
  const asked = { act: "ask_retake" as const, roundId, athleteName, coachPersonId: null };
  return (
    <>
      <Button onPress={() => setAsking(true)}>Ask for a new clip…</Button>
      <RoundDialogs asked={isAsking ? asked : null} coaches={[]} onClose={() => setAsking(false)} />
    </>
  );
}
